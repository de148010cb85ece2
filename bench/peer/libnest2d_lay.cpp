// Lays loose shapes with the packaged library libnest2d, for comparison with `hemwright lay`.
//
//   libnest2d_lay SECONDS SEED < shapes > layout.json        (seconds of one core)
//
// Shapes, as numbers apart by blanks: the strip's width; how many shapes; for each its demand, how
// many turns, these in degrees, how many corners, these as x y. The layout is the best of as many
// passes as fit into the time; each pass lays the copies one after another, the largest first but
// for some noise, where they touch what lies there farthest left, then lowest.
//
// The library itself has no-fit polygons of convex shapes only, and would let others overlap. The
// one added here is the usual extension: the outer contour of the edge pairs' sums, by Clipper.
#define LIBNEST2D_GEOMETRIES_clipper
#define LIBNEST2D_OPTIMIZER_nlopt
#define LIBNEST2D_THREADING_std

#include <libnest2d/backends/clipper/geometries.hpp>

namespace libnest2d { namespace nfp {

template<> struct MaxNfpLevel<PolygonImpl> {
  static const BP2D_CONSTEXPR NfpLevel value = NfpLevel::BOTH_CONCAVE;
};

inline NfpResult<PolygonImpl> sumOfOutlines(const PolygonImpl& fixed, const PolygonImpl& moving) {
  auto reference = referenceVertex(moving);
  ClipperLib::Path pattern;
  for (auto& corner : moving.Contour) {
    pattern.push_back(ClipperLib::IntPoint(-corner.X + reference.X, -corner.Y + reference.Y));
  }
  ClipperLib::Path path = fixed.Contour;
  pattern.pop_back();  // the library repeats the first corner at the end
  path.pop_back();
  ClipperLib::Paths sums;
  ClipperLib::MinkowskiSum(pattern, path, sums, true);
  ClipperLib::Path outer;
  for (auto& sum : sums) {
    if (outer.empty() || std::abs(ClipperLib::Area(sum)) > std::abs(ClipperLib::Area(outer))) {
      outer = sum;
    }
  }
  if (ClipperLib::Orientation(outer)) {
    ClipperLib::ReversePath(outer);
  }
  outer.push_back(outer.front());
  auto touch = rightmostUpVertex(fixed) - leftmostDownVertex(moving);
  return {PolygonImpl(outer), reference + touch};
}

template<> struct NfpImpl<PolygonImpl, NfpLevel::ONE_CONVEX> {
  NfpResult<PolygonImpl> operator()(const PolygonImpl& a, const PolygonImpl& b) {
    return sumOfOutlines(a, b);
  }
};

template<> struct NfpImpl<PolygonImpl, NfpLevel::BOTH_CONCAVE> {
  NfpResult<PolygonImpl> operator()(const PolygonImpl& a, const PolygonImpl& b) {
    return sumOfOutlines(a, b);
  }
};

}}  // namespace libnest2d::nfp

#include <libnest2d/libnest2d.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <random>
#include <string>
#include <vector>

using namespace libnest2d;

namespace {

const double STEPS = 1 << 27;  // across the strip
const double NOISE = 0.35;     // of the logarithm of an area
const double PI = 3.14159265358979323846;

struct Shape {
  int demand;
  std::vector<double> turns;
  ClipperLib::Path outline;
  double area;
};

struct Laid {
  int shape;
  double turn;
  double x;
  double y;
};

// Of the processor, so that other programs on the machine do not count.
double seconds() { return double(std::clock()) / CLOCKS_PER_SEC; }

}  // namespace

int main(int argc, char** argv) {
  double allowed = argc > 1 ? std::atof(argv[1]) : 10;
  std::mt19937_64 chance(argc > 2 ? std::atoll(argv[2]) : 1);
  double width;
  int count;
  std::cin >> width >> count;
  double scale = STEPS / width;
  std::vector<Shape> shapes(count);
  double longest = 0;
  for (Shape& shape : shapes) {
    int turns, corners;
    std::cin >> shape.demand >> turns;
    shape.turns.resize(turns);
    for (double& turn : shape.turns) std::cin >> turn;
    std::cin >> corners;
    double minX = 1e300, maxX = -1e300;
    for (int i = 0; i < corners; i++) {
      double x, y;
      std::cin >> x >> y;
      minX = std::min(minX, x);
      maxX = std::max(maxX, x);
      minX = std::min(minX, y);
      maxX = std::max(maxX, y);
      shape.outline.push_back(ClipperLib::IntPoint(std::llround(x * scale), std::llround(y * scale)));
    }
    shape.area = std::abs(ClipperLib::Area(shape.outline));
    if (ClipperLib::Orientation(shape.outline)) ClipperLib::ReversePath(shape.outline);
    shape.outline.push_back(shape.outline.front());
    longest += shape.demand * (maxX - minX) * scale;
  }
  Coord across = static_cast<Coord>(STEPS);
  Coord along = static_cast<Coord>(longest);
  Box strip = Box(along, across, {along / 2, across / 2});

  double best = 1e300;
  std::vector<Laid> bestLaid;
  int passes = 0;
  std::normal_distribution<double> noise(0, NOISE);
  do {
    std::vector<std::pair<double, int>> order;
    for (int s = 0; s < count; s++) {
      for (int k = 0; k < shapes[s].demand; k++) {
        order.push_back({-std::log(shapes[s].area) - (passes ? noise(chance) : 0), s});
      }
    }
    std::stable_sort(order.begin(), order.end(),
                     [](auto& a, auto& b) { return a.first < b.first; });
    std::vector<Item> items;
    for (auto& entry : order) {
      items.emplace_back(PolygonImpl(shapes[entry.second].outline));
      items.back().priority(0);
    }
    NfpPlacer::Config config;
    config.alignment = NfpPlacer::Config::Alignment::BOTTOM_LEFT;
    config.starting_point = NfpPlacer::Config::Alignment::BOTTOM_LEFT;
    config.parallel = false;
    config.object_function = [&](const Item& item) {
      auto box = item.boundingBox();
      double over = std::max(0.0, double(-getX(box.minCorner())));
      over += std::max(0.0, double(-getY(box.minCorner())));
      over += std::max(0.0, double(getY(box.maxCorner()) - across));
      return (getX(box.maxCorner()) + 1e-3 * getY(box.minCorner()) + 1e3 * over) / STEPS;
    };
    // Turns may differ from shape to shape in a file, but not in the library: every instance that
    // is compared has the same for all.
    config.rotations.clear();
    for (double turn : shapes[0].turns) config.rotations.push_back(turn * PI / 180);

    NfpPlacer placer(strip);
    placer.configure(config);
    bool whole = true;
    double length = 0;
    for (auto& item : items) {
      auto result = placer.trypack(item);
      if (!result) {
        whole = false;
        break;
      }
      placer.accept(result);
      length = std::max(length, double(getX(item.boundingBox().maxCorner())));
      if (seconds() > allowed && passes) {
        whole = false;
        break;
      }
    }
    if (whole) {
      passes++;
      if (length < best) {
        best = length;
        bestLaid.clear();
        for (size_t i = 0; i < items.size(); i++) {
          double turn = std::round(double(items[i].rotation()) * 180 / PI);
          bestLaid.push_back({order[i].second, turn, getX(items[i].translation()) / scale,
                              getY(items[i].translation()) / scale});
        }
      }
    } else if (!passes) {
      std::cerr << "a shape was not placed\n";
      return 1;
    }
  } while (seconds() < allowed);

  std::cout.precision(17);
  std::cout << "{\"length\": " << best / scale << ", \"passes\": " << passes << ", \"placements\": [";
  for (size_t i = 0; i < bestLaid.size(); i++) {
    const Laid& laid = bestLaid[i];
    std::cout << (i ? ",\n" : "\n") << "{\"shape\": " << laid.shape
              << ", \"rotationDegrees\": " << laid.turn << ", \"x\": " << laid.x
              << ", \"y\": " << laid.y << "}";
  }
  std::cout << "]}\n";
}
