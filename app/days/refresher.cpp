// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/refresher.h"

#include <QEvent>

#include <utility>

namespace days {

Refresher::Refresher(QWidget* panel, std::function<void()> refresh)
    : QObject(panel), panel_(panel), refresh_(std::move(refresh)) {
    panel->installEventFilter(this);
}

void Refresher::ask() {
    isBehind_ = true;
    if (!std::exchange(isAsked_, true)) {
        QMetaObject::invokeMethod(
            this,
            [this] {
                isAsked_ = false;
                refreshIfSeen();
            },
            Qt::QueuedConnection);
    }
}

void Refresher::finish() {
    if (std::exchange(isBehind_, false)) {
        refresh_();
    }
}

void Refresher::refreshIfSeen() {
    if (panel_->isVisible()) {
        finish();
    }
}

bool Refresher::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show) {
        refreshIfSeen(); // before it is painted for the first time
    }
    return QObject::eventFilter(watched, event);
}

} // namespace days
