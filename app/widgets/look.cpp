// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/look.h"

#include <QStyle>
#include <QVariant>
#include <QWidget>

namespace widgets {

void setLook(QWidget& widget, const char* property, bool isOn) {
    widget.setProperty(property, isOn);
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
}

} // namespace widgets
