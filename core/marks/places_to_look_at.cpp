// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/places_to_look_at.h"

#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace marks {

namespace {

using geo::WaterPoint;

/// Of all places, the shares that lattice and borders, and edges, may take.
constexpr double latticeShare = 0.35;
constexpr double edgeShare = 0.3;
constexpr double unlikeShare = 0.35;
/// Between the logarithms of two depths that are not alike.
constexpr double depthStep = 0.3;
/// A water too small for so many places half a cast apart gets them closer.
constexpr double onSmallWater = 400.0;

WaterPoint between(WaterPoint a, WaterPoint b, double t) {
    return {a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m)};
}

/// Where the border between the bands of a and b lies on the line between them, by halving.
WaterPoint borderBetween(const MarkInput& input, WaterPoint a, WaterPoint b) {
    const std::size_t bandOfA =
        input.bands.bandOf(input.ground.depthAt(a).value_or(units::Depth()));
    double low = 0.0;
    double high = 1.0;
    for (int step = 0; step < 12; ++step) {
        const double t = 0.5 * (low + high);
        const auto depth = input.ground.depthAt(between(a, b, t));
        const bool isLikeA = depth && input.bands.bandOf(*depth) == bandOfA;
        (isLikeA ? low : high) = t;
    }
    return between(a, b, 0.5 * (low + high));
}

/// The lattice with the borders of bands between its neighbours.
class Lattice {
public:
    Lattice(const MarkInput& input, double step_m) : input_(input), step_m_(step_m) {}

    void lay(std::vector<WaterPoint>& out) const {
        const geo::Box box = input_.ground.frame().box();
        const auto first = [this](double m) { return std::ceil(m / step_m_); };
        for (double row = first(box.south_m); row * step_m_ <= box.north_m; row += 1.0) {
            for (double col = first(box.west_m); col * step_m_ <= box.east_m; col += 1.0) {
                const WaterPoint p{col * step_m_, row * step_m_};
                if (!input_.ground.depthAt(p)) {
                    continue;
                }
                if (input_.ground.isFishable(p)) {
                    out.push_back(p);
                }
                addBorder(p, {p.x_m + step_m_, p.y_m}, out);
                addBorder(p, {p.x_m, p.y_m + step_m_}, out);
            }
        }
    }

private:
    void addBorder(WaterPoint a, WaterPoint b, std::vector<WaterPoint>& out) const {
        const auto here = input_.ground.depthAt(a);
        const auto there = input_.ground.depthAt(b);
        if (here && there && input_.bands.bandOf(*here) != input_.bands.bandOf(*there)) {
            out.push_back(borderBetween(input_, a, b));
        }
    }
    const MarkInput& input_;
    double step_m_;
};

double latticeStep_m(const MarkInput& input, double cast_m, std::size_t most) {
    std::size_t fishable = 0;
    const grid::GridFrame& frame = input.ground.frame();
    for (std::size_t i = 0; i < frame.size(); ++i) {
        fishable += input.ground.isFishable(frame.cellAt(i)) ? 1U : 0U;
    }
    const double area_m2 = static_cast<double>(fishable) * frame.cellArea_m2();
    const double finest_m = std::sqrt(area_m2 / (latticeShare * static_cast<double>(most)));
    const double small_m = std::max(frame.cell_m(), std::sqrt(area_m2 / onSmallWater));
    return std::max(std::min(0.5 * cast_m, small_m), finest_m);
}

/// Places every `step_m` along the edges, and as far to both sides as `aside_m`.
void addEdges(const MarkInput& input, double step_m, double aside_m, std::vector<WaterPoint>& out) {
    double left_m = 0.5 * step_m;
    std::int32_t zone = -1;
    for (const rods::EdgePiece& edge : input.ground.edges()) {
        const double length_m = geo::distance_m(edge.a, edge.b);
        if (edge.zone != zone) {
            zone = edge.zone;
            left_m = 0.5 * step_m;
        }
        while (left_m <= length_m && length_m > 0.0) {
            const WaterPoint p = between(edge.a, edge.b, left_m / length_m);
            const units::Bearing along = geo::bearing(edge.a, edge.b);
            out.push_back(p);
            out.push_back(geo::moved(p, along.turnedBy(90.0), units::Length::metres(aside_m)));
            out.push_back(geo::moved(p, along.turnedBy(-90.0), units::Length::metres(aside_m)));
            left_m += step_m;
        }
        left_m -= length_m;
    }
}

double edgeStep_m(const MarkInput& input, double cast_m, std::size_t most) {
    double sum_m = 0.0;
    for (const rods::EdgePiece& edge : input.ground.edges()) {
        sum_m += geo::distance_m(edge.a, edge.b);
    }
    return std::max(cast_m / 3.0, 3.0 * sum_m / (edgeShare * static_cast<double>(most)));
}

void addFeatures(const MarkInput& input, std::vector<WaterPoint>& out) {
    for (const structure::Zone& zone : input.ground.structure().zones) {
        if (structure::isFeature(zone.kind)) {
            out.push_back(zone.middle);
        }
    }
}

/// What the cells of a square have in common with one another and not with the square's place.
struct Alike {
    std::optional<structure::ZoneKind> kind;
    sections::SectionNumber section = sections::noSection;
    int depthStep = 0;
    friend auto operator<=>(const Alike&, const Alike&) = default;
};

/// Cells of a square that the lattice's own place does not stand for.
class UnlikeCells {
public:
    UnlikeCells(const MarkInput& input, const WhereToLie& lie, double step_m)
        : input_(input), lie_(lie), step_m_(step_m), middle_(middleOf(input.outline.box())) {}

    void lay(std::vector<WaterPoint>& out) const {
        const geo::Box box = input_.ground.frame().box();
        const auto number = [this](double m) { return std::floor(m / step_m_ + 0.5); };
        for (double row = number(box.south_m); row <= number(box.north_m); row += 1.0) {
            for (double col = number(box.west_m); col <= number(box.east_m); col += 1.0) {
                laySquare({col * step_m_, row * step_m_}, out);
            }
        }
    }

private:
    static WaterPoint middleOf(const geo::Box& box) {
        return {0.5 * (box.west_m + box.east_m), 0.5 * (box.south_m + box.north_m)};
    }

    /// The cells round the lattice's place whose middles are no farther from it than half a step:
    /// one on the border of two squares belongs to both, whichever way the water is turned.
    void laySquare(WaterPoint place, std::vector<WaterPoint>& out) const {
        const grid::GridFrame& frame = lie_.cells.frame();
        const double half_m = 0.5 * step_m_ * (1.0 + 1e-9);
        const grid::Cell first = frame.cellOf({place.x_m - half_m, place.y_m + half_m});
        const grid::Cell last = frame.cellOf({place.x_m + half_m, place.y_m - half_m});
        std::optional<Alike> own;
        double depth_m = 1.0;
        bool isAsked = false;
        std::map<Alike, std::vector<WaterPoint>> others;
        for (int row = first.row; row <= last.row; ++row) {
            for (int col = first.col; col <= last.col; ++col) {
                const grid::Cell c{col, row};
                const WaterPoint p = frame.centre(c);
                if (!lie_.cells.mayLieIn(c) || std::fabs(p.x_m - place.x_m) > half_m ||
                    std::fabs(p.y_m - place.y_m) > half_m) {
                    continue;
                }
                if (!isAsked) {
                    isAsked = true;
                    if (lie_.at(place)) {
                        depth_m = input_.ground.depthAt(place).value_or(units::Depth()).inMetres();
                        own = alike(place, depth_m, depth_m);
                    }
                }
                const double here_m =
                    static_cast<double>(input_.ground.today().raw_m()[frame.index(c)]);
                const Alike like = alike(p, here_m, depth_m);
                if (like != own) {
                    others[like].push_back(p);
                }
            }
        }
        for (const auto& [like, cells] : others) {
            out.push_back(middlemost(cells));
        }
    }

    [[nodiscard]] Alike alike(WaterPoint p, double depth_m, double than_m) const {
        const auto& map = input_.sections.sectionOfCell;
        const grid::Cell c = map.frame().cellOf(p);
        return {input_.ground.kindAt(p), map.frame().holds(c) ? map[c] : sections::noSection,
                static_cast<int>(std::lround(std::log(depth_m / than_m) / depthStep))};
    }

    /// The nearest to the middle of all; of equals the nearest to the middle of the water.
    [[nodiscard]] WaterPoint middlemost(const std::vector<WaterPoint>& cells) const {
        WaterPoint sum;
        for (const WaterPoint p : cells) {
            sum.x_m += p.x_m;
            sum.y_m += p.y_m;
        }
        const auto n = static_cast<double>(cells.size());
        const WaterPoint mean{sum.x_m / n, sum.y_m / n};
        return *std::ranges::min_element(cells, {}, [&](WaterPoint p) {
            return std::pair(std::round(1e3 * geo::distance_m(p, mean)),
                             geo::distance_m(p, middle_));
        });
    }

    const MarkInput& input_;
    const WhereToLie& lie_;
    double step_m_;
    WaterPoint middle_;
};

/// The squares widen until their places are no more than their share.
std::vector<WaterPoint> unlikeCells(const MarkInput& input, const WhereToLie& lie, double step_m,
                                    std::size_t most) {
    const double share = unlikeShare * static_cast<double>(most);
    for (;; step_m *= 1.5) {
        std::vector<WaterPoint> places;
        UnlikeCells(input, lie, step_m).lay(places);
        if (static_cast<double>(places.size()) <= share ||
            step_m > input.ground.frame().box().width_m()) {
            return places;
        }
    }
}

} // namespace

std::vector<WaterPoint> placesToLookAt(const MarkInput& input, const WhereToLie& lie, double cast_m,
                                       std::size_t most) {
    std::vector<WaterPoint> places;
    const double step_m = latticeStep_m(input, cast_m, most);
    addEdges(input, edgeStep_m(input, cast_m, most), cast_m / 3.0, places);
    addFeatures(input, places);
    Lattice(input, step_m).lay(places);
    std::erase_if(places, [&](WaterPoint p) { return !lie.at(p); });
    const auto unlike = unlikeCells(input, lie, step_m, most);
    places.insert(places.end(), unlike.begin(), unlike.end());
    return places;
}

} // namespace marks
