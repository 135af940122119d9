// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPalette>

namespace widgets {

// The chart's inks as roles of the application's palette, so that what widgets draw themselves
// follows the theme. window::applyStyle fills them.

inline constexpr QPalette::ColorRole inkRole = QPalette::WindowText;
inline constexpr QPalette::ColorRole faintRole = QPalette::PlaceholderText;
inline constexpr QPalette::ColorRole warningRole = QPalette::BrightText;
inline constexpr QPalette::ColorRole rodsRole = QPalette::Link; ///< Rods and fish.
inline constexpr QPalette::ColorRole weedRole = QPalette::LinkVisited;
inline constexpr QPalette::ColorRole barRole = QPalette::Midlight; ///< Bars of what is counted.
inline constexpr QPalette::ColorRole edgeRole = QPalette::Shadow;  ///< Round what can be operated.
inline constexpr QPalette::ColorRole sandRole = QPalette::Mid;     ///< Faint lines and grounds.

} // namespace widgets
