// What stands round the dials.

export const DIALS = {
  title: 'Dials',
  garment: (size) => `The garment in size ${size}`,
  ease: (said) => `ease ${said}`,
};
