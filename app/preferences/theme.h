// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace preferences {

/// In which colours the window is.
enum class Theme { light, dark, highContrast };
inline constexpr std::array allThemes{Theme::light, Theme::dark, Theme::highContrast};

/// Kinds of files that are asked for or saved, each with a folder of its own.
enum class FileKind { water, survey, log, track, picture, output };

} // namespace preferences
