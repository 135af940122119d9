// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/layer_strengths.h"

#include "app/preferences/preferences.h"

#include <algorithm>
#include <array>

namespace days {

namespace {

using preferences::Preferences;

/// What each is kept under, in the order of chart::fadingLayers.
constexpr std::array<const char*, chart::fadingLayers.size()> names{
    "depth",    "rates",     "contours",  "structure", "weed",
    "sections", "graticule", "soundings", "crossings"};

QString nameOf(chart::LayerKind kind) {
    const auto found = std::ranges::find(chart::fadingLayers, kind);
    return QString::fromLatin1(
        names.at(static_cast<std::size_t>(std::distance(chart::fadingLayers.begin(), found))));
}

} // namespace

std::map<chart::LayerKind, double> keptStrengths() {
    std::map<chart::LayerKind, double> strengths;
    for (const chart::LayerKind kind : chart::fadingLayers) {
        strengths[kind] = Preferences::strengthOf(nameOf(kind));
    }
    return strengths;
}

void keepStrength(chart::LayerKind kind, double strength) {
    Preferences::keepStrength(nameOf(kind), strength);
}

} // namespace days
