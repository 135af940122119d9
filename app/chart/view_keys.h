// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"

#include <optional>

namespace chart {

/// The view that a key of the chart asks for: the arrows move it, plus and minus change its scale
/// about the middle. Nothing for any other key.
[[nodiscard]] std::optional<ViewFrame> viewAfterKey(int key, const ViewFrame& view);

} // namespace chart
