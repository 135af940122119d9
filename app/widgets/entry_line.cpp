// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/entry_line.h"

#include "app/widgets/look.h"

#include <QCompleter>
#include <QKeyEvent>

namespace widgets {

EntryLine::EntryLine(QWidget* parent) : QLineEdit(parent) {
    connect(this, &QLineEdit::textChanged, this, [this] { setWrong(false); });
    connect(this, &QLineEdit::editingFinished, this, &EntryLine::check);
}

void EntryLine::setWhenEmpty(const QString& whenEmpty) {
    whenEmpty_ = whenEmpty;
    showOffered();
}

void EntryLine::offer(const QString& offered) {
    offered_ = offered;
    showOffered();
}

void EntryLine::showOffered() {
    setPlaceholderText(offered_.isEmpty() ? whenEmpty_ : QStringLiteral("= %1").arg(offered_));
}

void EntryLine::complete(const QStringList& words) {
    auto* completer = new QCompleter(words, this);
    completer->setCompletionMode(QCompleter::InlineCompletion);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    delete this->completer();
    setCompleter(completer);
}

bool EntryLine::check() {
    setWrong(!isRight_);
    return isRight_;
}

void EntryLine::keyPressEvent(QKeyEvent* event) {
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isReturn && event->modifiers().testFlag(Qt::ControlModifier)) {
        emit writeAsked();
    } else if (isReturn) {
        end(false); // What was completed is meant.
        if (check()) {
            emit goneOn();
        }
    } else if (event->key() == Qt::Key_Escape) {
        emit left();
    } else if (event->text() == QStringLiteral("=") && text().isEmpty() && !offered_.isEmpty()) {
        setText(offered_);
    } else {
        QLineEdit::keyPressEvent(event);
    }
}

void EntryLine::setWrong(bool isWrong) {
    if (isWrong == isWrong_) {
        return;
    }
    isWrong_ = isWrong;
    setLook(*this, "wrong", isWrong);
    emit wrongChanged(isWrong);
}

} // namespace widgets
