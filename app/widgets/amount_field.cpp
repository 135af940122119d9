// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/amount_field.h"

#include "app/widgets/look.h"

#include <QKeyEvent>

namespace widgets {

AmountField::AmountField(std::function<bool(const QString&)> isRight, const QString& whenEmpty,
                         QWidget* parent)
    : QLineEdit(parent), isRight_(std::move(isRight)), mayBeEmpty_(!whenEmpty.isNull()) {
    setPlaceholderText(whenEmpty);
    connect(this, &QLineEdit::editingFinished, this, &AmountField::finish);
    connect(this, &QLineEdit::textEdited, this, [this] { setWrong(false); });
}

void AmountField::showAmount(const QString& text) {
    if (hasFocus() && isModified()) {
        return;
    }
    shown_ = text;
    setText(text);
    setCursorPosition(0);
    setWrong(false);
}

void AmountField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && (isModified() || isWrong_)) {
        setModified(false);
        showAmount(shown_);
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void AmountField::finish() {
    if (!isModified()) {
        return;
    }
    const QString typed = text().trimmed();
    if (typed == shown_) {
        setModified(false);
        return;
    }
    const bool isRight = typed.isEmpty() ? mayBeEmpty_ : isRight_(typed);
    setWrong(!isRight);
    if (isRight) {
        setModified(false);
        shown_ = typed;
        emit entered(typed);
    }
}

void AmountField::setWrong(bool isWrong) {
    if (isWrong == isWrong_) {
        return;
    }
    isWrong_ = isWrong;
    setLook(*this, "wrong", isWrong);
    emit wrongChanged(isWrong);
}

} // namespace widgets
