// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/theme.h"

class QApplication;

namespace window {

/// Paper and ink for every widget: one family of type in two sizes, few lines, colours from the
/// chart's palette of the theme. May be called again while the window is open. \param typeScale of
/// all letters; 1 for usual ones.
void applyStyle(QApplication& app, preferences::Theme theme = preferences::Theme::light,
                double typeScale = 1.0);

} // namespace window
