// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/base/result.h"

#include <QString>
#include <QWidget>

namespace days {

/// Whether something else may be written to `path`, over what stands there: never over a water
/// file, open or not, and only where a regular file stands or nothing. \return unwritableOutput.
[[nodiscard]] base::Result<void> mayBeWrittenOver(const QString& path);

/// Asks where to save a sheet, table or the like. \param name proposed. \return empty where the
/// user goes back, or where the place may not be written over; then `open` has told why.
[[nodiscard]] QString askWhereToSave(QWidget& parent, open_water::OpenWater& open,
                                     const QString& title, const QString& name,
                                     const QString& filter);

} // namespace days
