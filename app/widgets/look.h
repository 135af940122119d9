// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace widgets {

/// Sets a property that the style sheet asks for, and shows the widget by it at once: a style is
/// not told of properties that change.
void setLook(QWidget& widget, const char* property, bool isOn);

} // namespace widgets
