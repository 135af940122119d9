// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/elided_label.h"

#include <QPainter>
#include <QStyle>

namespace widgets {

namespace {
constexpr int fewLetters = 5; // are always shown
} // namespace

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
}

void ElidedLabel::setWhole(const QString& words) {
    setText(words);
    tell();
}

bool ElidedLabel::isCut() const {
    return fontMetrics().horizontalAdvance(text()) > contentsRect().width();
}

QSize ElidedLabel::minimumSizeHint() const {
    const int letters = fontMetrics().averageCharWidth() * fewLetters;
    return {std::min(letters, QLabel::sizeHint().width()), QLabel::sizeHint().height()};
}

void ElidedLabel::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    style()->drawItemText(&painter, contentsRect(),
                          static_cast<int>(QStyle::visualAlignment(layoutDirection(), alignment())),
                          palette(), isEnabled(),
                          fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width()),
                          foregroundRole());
}

void ElidedLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    tell();
}

void ElidedLabel::tell() {
    setToolTip(isCut() ? text() : QString());
}

} // namespace widgets
