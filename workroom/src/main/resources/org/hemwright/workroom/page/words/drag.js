// What is said while something is dragged.

const REACH = { all: 'in all sizes', from_here: 'from this size up', this: 'in this size alone', '': '' };

export const DRAG = {
  start: 'Move it by steps',
  step: 'Each arrow moves it by 1 mm, with Shift by 10 mm; numbers keep the step they are written in. Enter writes, Escape leaves it.',
  toward: { ArrowLeft: 'Left', ArrowRight: 'Right', ArrowUp: 'Up', ArrowDown: 'Down' },
  how: 'How it will be written',
  write: 'Write it',
  leave: 'Leave it',
  ways: 'How it will be written; press its figure while you hold',
  none: 'This follows from other points: no number of yours moves it. Drag the points that its line names.',
  way(way) {
    const name = way.name.replaceAll('_', ' ');
    const words = {
      own: 'the line\u2019s own numbers', dial: `the dial ${name}`, let: `the number ${name}`, leg: 'a leg added to the line',
    }[way.kind];
    return REACH[way.reach] ? `${words}, ${REACH[way.reach]}` : words;
  },
};
