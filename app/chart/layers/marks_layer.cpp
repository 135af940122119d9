// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/marks_layer.h"

#include "app/chart/banned_drawing.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/way_drawing.h"

#include <ranges>

namespace chart {

namespace {

constexpr double letteredFrom_pixelsPerMetre = 2.5;
constexpr double oldOpacity = 0.4; // pale, and still to be found again

bool showsLie(const LayerContext& on, const marks::Mark& mark) {
    return chart::showsLie(on.content, on.view, on.scale, mark.rank);
}

/// Marks of a plan that no longer holds must not look like those of one that does.
void fadeIfOld(LayerContext& on) {
    if (on.content.age.isPlanOld) {
        on.painter.setOpacity(oldOpacity);
    }
}

} // namespace

void MarksLayer::reserve(LayerContext& on) const {
    if (!on.content.planned) {
        return;
    }
    const double radius = ringRadius(on.scale) + 3.0 * on.scale;
    for (const auto& [rank, ring] : ringsOf(on.content.planned->marks, on.view, on.scale)) {
        on.labels.block(
            {ring.middle.x() - radius, ring.middle.y() - radius, 2.0 * radius, 2.0 * radius});
    }
}

void MarksLayer::paint(LayerContext& on) const {
    drawBanned(on);
    if (!on.content.planned) {
        return;
    }
    const water::PlannedDay& planned = *on.content.planned;
    fadeIfOld(on);
    if (!isNear(on.view, on.scale)) {
        // Nearer, the ropes and rods are to be seen, and the line would lie across them.
        drawWay(on, planned.day);
    }
    for (const marks::Mark& mark : planned.marks) {
        if (showsLie(on, mark)) {
            drawLie(on, mark, planned.plan.tackle.boatLength);
        }
    }
    const auto rings = ringsOf(planned.marks, on.view, on.scale);
    for (const marks::Mark& mark : planned.marks | std::views::reverse) {
        drawRing(on, mark, rings.at(mark.rank), on.content.selection.mark == mark.rank);
    }
}

void MarksLayer::letter(LayerContext& on) const {
    letterBanned(on);
    if (!on.content.planned) {
        return;
    }
    fadeIfOld(on);
    for (const marks::Mark& mark : on.content.planned->marks) {
        const bool isSelected = on.content.selection.mark == mark.rank;
        if (on.view.pixelsPerMetre() >= letteredFrom_pixelsPerMetre * on.scale &&
            showsLie(on, mark) && (isSelected || !on.content.selection.mark)) {
            letterLie(on, mark);
        }
    }
}

} // namespace chart
