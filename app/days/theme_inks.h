// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "app/preferences/theme.h"

namespace days {

/// The colours of a theme of the screen.
[[nodiscard]] constexpr chart::Inks inksOf(preferences::Theme theme) {
    switch (theme) {
    case preferences::Theme::light:
        return chart::Inks::light;
    case preferences::Theme::dark:
        return chart::Inks::dark;
    case preferences::Theme::highContrast:
        return chart::Inks::highContrast;
    }
    return chart::Inks::light;
}

} // namespace days
