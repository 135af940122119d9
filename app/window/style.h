// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QApplication;

namespace window {

/// Paper and ink for every widget: one family of type in two sizes, few lines, colours from the
/// chart's palette.
void applyStyle(QApplication& app);

} // namespace window
