// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/reshape_shore.h"

#include "app/edits/change_water.h"
#include "core/water/reshape_shore.h"

namespace edits {

namespace {

using base::Result;
using water::Shoreline;

/// \param reshape given the shoreline and the frame; gives the other shoreline.
template <class Reshape>
Result<void> reshaped(open_water::OpenWater& open, const QString& name, const Reshape& reshape) {
    const auto& frame = open.water()->frame;
    if (!frame) {
        return base::fail(base::ErrorKind::wrongUse, "there is no chart to draw a shore on yet", "",
                          "bring in soundings or a backdrop first");
    }
    Result<Shoreline> other = reshape(open.water()->shoreline, *frame);
    if (!other) {
        return std::unexpected(other.error());
    }
    change(open, name, {water::Part::shoreline},
           [&](water::Water& water) { water.shoreline = *other; });
    return {};
}

} // namespace

Result<void> moveShoreCorner(open_water::OpenWater& open, water::ShoreCorner corner,
                             geo::WaterPoint to) {
    return reshaped(open, QObject::tr("Move shore corner"),
                    [&](const Shoreline& shore, const geo::WaterFrame& frame) {
                        return water::withCornerMoved(shore, frame, corner, to);
                    });
}

Result<void> addShoreCorner(open_water::OpenWater& open, water::ShoreCorner after,
                            geo::WaterPoint at) {
    return reshaped(open, QObject::tr("Add shore corner"),
                    [&](const Shoreline& shore, const geo::WaterFrame& frame) {
                        return water::withCornerAdded(shore, frame, after, at);
                    });
}

Result<void> removeShoreCorner(open_water::OpenWater& open, water::ShoreCorner corner) {
    return reshaped(open, QObject::tr("Take away shore corner"),
                    [&](const Shoreline& shore, const geo::WaterFrame& frame) {
                        return water::withoutCorner(shore, frame, corner);
                    });
}

Result<void> addIsland(open_water::OpenWater& open, const geo::Ring& island) {
    return reshaped(open, QObject::tr("Draw island"),
                    [&](const Shoreline& shore, const geo::WaterFrame& frame) {
                        return water::withIsland(shore, frame, island);
                    });
}

Result<void> removeIslandAt(open_water::OpenWater& open, geo::WaterPoint at) {
    return reshaped(open, QObject::tr("Take away island"),
                    [&](const Shoreline& shore, const geo::WaterFrame& frame) {
                        return water::withoutIslandAt(shore, frame, at);
                    });
}

Result<void> traceShore(open_water::OpenWater& open, const geo::Ring& shore) {
    return reshaped(open, QObject::tr("Trace shoreline"),
                    [&](const Shoreline& before, const geo::WaterFrame& frame) {
                        return water::tracedAnew(before, frame, shore);
                    });
}

} // namespace edits
