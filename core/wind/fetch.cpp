// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/fetch.h"

#include <cmath>

namespace wind {

namespace {

constexpr int radialsEachWay = 7;
constexpr double radialStep_deg = 6.0;

/// Calls `take(turn_deg, weight)` for the 15 radials; weights sum to 1.
template <class Take>
void forRadials(Take take) {
    double sum = 0.0;
    const auto weightOf = [](int k) { return units::Bearing::degrees(k * radialStep_deg).north(); };
    for (int k = -radialsEachWay; k <= radialsEachWay; ++k) {
        sum += weightOf(k);
    }
    for (int k = -radialsEachWay; k <= radialsEachWay; ++k) {
        take(k * radialStep_deg, weightOf(k) / sum);
    }
}

/// A way through the cells that touches every cell of the frame once: parallel lines that step one
/// cell along the axis nearer to the wind and shift sideways where the wind has gone half a cell.
class Sweep {
public:
    Sweep(const grid::GridFrame& frame, units::Bearing windFrom)
        : frame_(frame), alongRows_(std::fabs(windFrom.north()) >= std::fabs(windFrom.east())) {
        // Columns count east and rows count south; steps go from upwind to downwind.
        const double cols = -windFrom.east();
        const double rows = windFrom.north();
        const double major = alongRows_ ? rows : cols;
        backwards_ = major < 0.0;
        slope_ = (alongRows_ ? cols : rows) / std::fabs(major);
        step_m_ = frame.cell_m() / std::fabs(major);
    }

    [[nodiscard]] int steps() const { return alongRows_ ? frame_.rows() : frame_.cols(); }
    [[nodiscard]] double step_m() const { return step_m_; }
    /// Lines are numbered by where they enter, beside the frame too.
    [[nodiscard]] int firstLine() const { return std::min(0, -shiftAt(steps() - 1)); }
    [[nodiscard]] int lastLine() const { return width() - 1 + std::max(0, -shiftAt(steps() - 1)); }
    [[nodiscard]] grid::Cell cellAt(int line, int step) const {
        const int major = backwards_ ? steps() - 1 - step : step;
        const int minor = line + shiftAt(step);
        return alongRows_ ? grid::Cell{minor, major} : grid::Cell{major, minor};
    }

private:
    [[nodiscard]] int width() const { return alongRows_ ? frame_.cols() : frame_.rows(); }
    [[nodiscard]] int shiftAt(int step) const {
        return static_cast<int>(std::floor(slope_ * step + 0.5));
    }

    const grid::GridFrame& frame_;
    bool alongRows_;
    bool backwards_ = false;
    double slope_ = 0.0;
    double step_m_ = 0.0;
};

/// Adds `weight` times the straight fetch to every active cell.
void addFetch(const grid::Mask& mask, units::Bearing windFrom, double weight,
              grid::Grid<float>& fetch_m) {
    const grid::GridFrame& frame = mask.frame();
    const Sweep sweep(frame, windFrom);
    for (int line = sweep.firstLine(); line <= sweep.lastLine(); ++line) {
        double open_m = 0.0;
        for (int step = 0; step < sweep.steps(); ++step) {
            const grid::Cell cell = sweep.cellAt(line, step);
            if (!mask.isActive(cell)) {
                open_m = 0.0;
                continue;
            }
            const std::size_t index = frame.index(cell);
            const double own_m = sweep.step_m() * static_cast<double>(mask.share(index));
            fetch_m[index] += static_cast<float>(weight * (open_m + 0.5 * own_m));
            open_m += own_m;
        }
    }
}

} // namespace

Fetch fetchAt(const geo::Outline& outline, geo::WaterPoint place, units::Bearing windFrom) {
    Fetch fetch;
    if (!outline.contains(place)) {
        return fetch;
    }
    const auto radial = [&](double turn_deg) {
        return units::Length::metres(
            outline.firstShoreAhead_m(place, windFrom.turnedBy(turn_deg)).value_or(0.0));
    };
    fetch.straight = radial(0.0);
    forRadials(
        [&](double turn_deg, double weight) { fetch.effective += weight * radial(turn_deg); });
    return fetch;
}

grid::Grid<float> fetchGrid_m(const grid::Mask& mask, units::Bearing windFrom) {
    grid::Grid<float> fetch_m(mask.frame(), 0.0F);
    addFetch(mask, windFrom, 1.0, fetch_m);
    return fetch_m;
}

grid::Grid<float> effectiveFetchGrid_m(const grid::Mask& mask, units::Bearing windFrom) {
    grid::Grid<float> fetch_m(mask.frame(), 0.0F);
    forRadials([&](double turn_deg, double weight) {
        addFetch(mask, windFrom.turnedBy(turn_deg), weight, fetch_m);
    });
    return fetch_m;
}

} // namespace wind
