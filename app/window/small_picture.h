// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "app/open_water/first_look.h"

#include <QImage>
#include <QSize>

namespace window {

/// The water as it can be told from others at a glance: shore and depths without a letter. Paper
/// alone where nothing is drawn yet. Takes no widget; may run on any thread.
[[nodiscard]] QImage smallPicture(const open_water::FirstLook& look, QSize size, chart::Inks inks);

} // namespace window
