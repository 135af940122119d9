// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/label_space.h"
#include "app/chart/palette.h"
#include "app/side_view/side_scene.h"

namespace side_view {

/// What the parts of the side view are given to draw with.
struct SideOn {
    QPainter& painter;
    const SideScene& scene;
    SideFrame frame;
    const chart::Palette& palette;
    chart::LabelSpace& labels;
    double scale = 1.0;
};

} // namespace side_view
