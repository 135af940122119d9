// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <QImage>
#include <QSize>

#include <memory>

namespace paper {

/// The water as it can be told from others at a glance: shore and depths without a letter. Paper
/// alone where nothing is drawn yet. Takes no widget; may run on any thread.
/// \param water may be facts and shoreline only. \param kept with the drawing kept, if any.
[[nodiscard]] QImage renderSmallPicture(std::shared_ptr<const water::Water> water,
                                        const water::Derived& kept, QSize size, chart::Inks inks);

} // namespace paper
