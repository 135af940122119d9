// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/weed_note.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace weed {

std::string_view nameOf(Growth growth) {
    switch (growth) {
    case Growth::none:
        return "none";
    case Growth::thin:
        return "thin";
    case Growth::thick:
        return "thick";
    }
    return "";
}

std::optional<Growth> growthNamed(std::string_view name) {
    for (const Growth growth : {Growth::none, Growth::thin, Growth::thick}) {
        if (nameOf(growth) == name) {
            return growth;
        }
    }
    return std::nullopt;
}

double worthOf(const WeedNote& note, std::optional<std::chrono::year> year) {
    constexpr double leftAfterAYear = 0.5;
    const int years = year && note.seen ? int(*year) - int(note.seen->year()) : 0;
    return std::pow(leftAfterAYear, std::max(years, 0));
}

WeedNote noteOver(Extent extent, std::vector<geo::LonLat> corners) {
    const std::size_t least = extent == Extent::area ? 3 : extent == Extent::line ? 2 : 1;
    WeedNote note;
    note.place = corners.empty() ? geo::LonLat() : corners.front();
    if (extent != Extent::place && corners.size() >= least) {
        note.extent = extent;
        note.corners = std::move(corners);
    }
    return note;
}

} // namespace weed
