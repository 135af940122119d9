// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace window {

/// The files of the invented sample water that came with the program, in a folder `sample` beside
/// its other data, or in the source tree of a program that is not installed. \param program the
/// folder of the executable. \return empty where they are not there.
[[nodiscard]] QStringList sampleFiles(const QString& program);

} // namespace window
