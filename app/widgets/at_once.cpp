// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/at_once.h"

#include <QShortcutEvent>

namespace widgets {

namespace {

class ClicksOnItsKey : public QObject {
public:
    explicit ClicksOnItsKey(QAbstractButton& button) : QObject(&button), button_(button) {}

    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* key = event->type() == QEvent::Shortcut
                              ? dynamic_cast<const QShortcutEvent*>(event)
                              : nullptr;
        if (key == nullptr || key->isAmbiguous()) {
            return QObject::eventFilter(watched, event);
        }
        button_.click();
        return true;
    }

private:
    QAbstractButton& button_;
};

} // namespace

void actAtOnce(QAbstractButton& button) {
    button.installEventFilter(new ClicksOnItsKey(button));
}

} // namespace widgets
