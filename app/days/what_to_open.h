// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/theme.h"

#include <QString>
#include <QStringList>
#include <QWidget>

namespace days {

/// Asks for a file to be read, beginning in the folder of the last one of its kind. \return empty
/// where the user goes back.
[[nodiscard]] QString askWhatToOpen(QWidget* parent, preferences::FileKind kind,
                                    const QString& title, const QString& filter);
/// The same for several files at once.
[[nodiscard]] QStringList askWhatAllToOpen(QWidget* parent, preferences::FileKind kind,
                                           const QString& title);

} // namespace days
