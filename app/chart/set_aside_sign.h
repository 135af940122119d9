// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/palette.h"
#include "core/soundings/verdict.h"

#include <QPainterPath>

#include <array>
#include <optional>

namespace chart {

/// Reasons for setting aside that look alike on the chart and in the side view.
enum class ReasonFamily {
    echo,     ///< The sounder was wrong: drop-out, spike, double echo, stuck depth.
    position, ///< The place was wrong: jump, stuck position, outside the shore.
    others,   ///< Other passes, or the user, say no.
};
inline constexpr std::array allReasonFamilies{ReasonFamily::echo, ReasonFamily::position,
                                              ReasonFamily::others};

/// Nothing for what is kept.
[[nodiscard]] std::optional<ReasonFamily> familyOf(soundings::Verdict verdict);
/// Each family has its form and its colour: a lying cross, an upright one, a small square.
void addSign(QPainterPath& path, ReasonFamily family, QPointF at, double arm);
[[nodiscard]] QColor colourOf(const Palette& palette, ReasonFamily family);

} // namespace chart
