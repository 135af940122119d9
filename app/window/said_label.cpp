// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/said_label.h"

#include <QMouseEvent>
#include <QTextLayout>

namespace window {

namespace {

constexpr int mostLines = 2;
constexpr int openedMargin = 10;

} // namespace

SaidLabel::SaidLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    setMinimumWidth(120);
}

void SaidLabel::say(const QString& sentence) {
    whole_ = sentence;
    fit();
}

void SaidLabel::fit() {
    QTextLayout layout(whole_, font());
    layout.beginLayout();
    QStringList lines;
    int from = 0;
    while (lines.size() < mostLines) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) {
            break;
        }
        line.setLineWidth(width());
        from = line.textStart();
        lines.append(whole_.mid(from, line.textLength()).trimmed());
    }
    const bool isCut = layout.createLine().isValid();
    layout.endLayout();
    if (isCut) {
        lines.back() = fontMetrics().elidedText(whole_.mid(from), Qt::ElideRight, width());
    }
    isWhole_ = !isCut;
    setToolTip(isWhole_ ? QString() : tr("Click to read all of it"));
    setCursor(isWhole_ ? Qt::IBeamCursor : Qt::PointingHandCursor);
    if (const QString text = lines.join(QLatin1Char('\n')); text != this->text()) {
        setText(text);
    }
}

void SaidLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    fit();
}

void SaidLabel::mouseReleaseEvent(QMouseEvent* event) {
    QLabel::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton && !isWhole_ && !hasSelectedText()) {
        openWhole();
    }
}

void SaidLabel::openWhole() {
    auto* opened = new QLabel(whole_, this, Qt::Popup);
    opened->setObjectName(QStringLiteral("wholeSaid"));
    opened->setAttribute(Qt::WA_DeleteOnClose);
    opened->setTextFormat(Qt::PlainText);
    opened->setWordWrap(true);
    opened->setFrameShape(QFrame::Box);
    opened->setMargin(openedMargin);
    opened->setFixedWidth(width());
    opened->setFixedHeight(opened->heightForWidth(width()));
    opened->move(mapToGlobal(QPoint(0, height() - opened->height())));
    opened->show();
}

} // namespace window
