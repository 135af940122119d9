// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <QImage>
#include <QString>
#include <QWidget>

namespace days::looking_back {

void copyToClipboard(const QImage& picture);
void copyToClipboard(const QString& text);

/// Asks where to, and writes the text there whole or not at all; tells what became of it.
void saveTableOf(QWidget& parent, open_water::OpenWater& open, const QString& name,
                 const QString& text);

} // namespace days::looking_back
