// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace chart {

/// In which colours everything is drawn: one of the three themes of the screen, or the grey twin
/// for a black and white page. Colour on paper is always `light`.
enum class Inks { light, dark, highContrast, grey };
inline constexpr std::array allInks{Inks::light, Inks::dark, Inks::highContrast, Inks::grey};

/// What is printed of what the screen shows in these.
[[nodiscard]] constexpr Inks onPaper(Inks inks) {
    return inks == Inks::grey ? Inks::grey : Inks::light;
}

} // namespace chart
