// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace soundings {

/// Why a sounding is left out of the drawing; `kept` where it is not. Set aside is never deleted.
enum class Verdict : std::uint8_t {
    kept,
    dropOut,    ///< No echo: zero, or deeper than any stillwater.
    spike,      ///< Far from its neighbours along the track.
    doubleEcho, ///< About twice its neighbours: the echo went up and down twice.
    stuckDepth, ///< The same figure over a stretch where the boat moved and the bottom did not stay
                ///< level before and after.
    positionJump,  ///< The boat cannot have been there.
    stuckPosition, ///< The position stood still while the depth went on.
    outsideShore,  ///< On land, by the shoreline given.
    disagrees,     ///< Other passes over the place show another depth.
    byHand,        ///< The user said so.
};

inline constexpr std::array allVerdicts{
    Verdict::kept,       Verdict::dropOut,      Verdict::spike,         Verdict::doubleEcho,
    Verdict::stuckDepth, Verdict::positionJump, Verdict::stuckPosition, Verdict::outsideShore,
    Verdict::disagrees,  Verdict::byHand};

/// The name in files and reports: "spike", "outside_shore"; empty for kept.
[[nodiscard]] std::string_view nameOf(Verdict verdict);

} // namespace soundings
