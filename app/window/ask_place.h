// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace window {

/// Asks where the file of a water is to be, beginning in the folder of the last one. \return with
/// the ending of a water file; empty where the user goes back.
[[nodiscard]] QString askPlace(QWidget* parent, const QString& title);

} // namespace window
