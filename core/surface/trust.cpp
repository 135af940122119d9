// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/trust.h"

#include <cmath>
#include <numeric>
#include <utility>

namespace surface {

std::string_view wordFor(TrustName name) {
    switch (name) {
    case TrustName::sounded:
        return "sounded";
    case TrustName::inferred:
        return "inferred";
    case TrustName::guess:
        break;
    }
    return "guess";
}

TrustGrid::TrustGrid(grid::Grid<float> halfWidth_m, grid::Grid<TrustName> names)
    : halfWidth_m_(std::move(halfWidth_m)), names_(std::move(names)) {
    std::array<std::size_t, 3> bearing{};
    for (std::size_t i = 0; i < halfWidth_m_.size(); ++i) {
        if (!std::isnan(halfWidth_m_[i])) {
            ++bearing[static_cast<std::size_t>(names_[i])];
        }
    }
    const std::size_t all = std::accumulate(bearing.begin(), bearing.end(), std::size_t{0});
    for (std::size_t name = 0; all > 0 && name < shares_.size(); ++name) {
        shares_[name] = static_cast<double>(bearing[name]) / static_cast<double>(all);
    }
}

bool TrustGrid::has(grid::Cell c) const {
    return frame().holds(c) && !std::isnan(halfWidth_m_[c]);
}

std::optional<TrustName> TrustGrid::at(grid::Cell c) const {
    return has(c) ? std::optional(names_[c]) : std::nullopt;
}

std::optional<TrustName> TrustGrid::at(geo::WaterPoint p) const {
    return at(frame().cellOf(p));
}

std::optional<units::Length> TrustGrid::halfWidthAt(grid::Cell c) const {
    return has(c) ? std::optional(units::Length::metres(static_cast<double>(halfWidth_m_[c])))
                  : std::nullopt;
}

std::optional<units::Length> TrustGrid::halfWidthAt(geo::WaterPoint p) const {
    return halfWidthAt(frame().cellOf(p));
}

double TrustGrid::shareOf(TrustName name) const {
    return shares_[static_cast<std::size_t>(name)];
}

} // namespace surface
