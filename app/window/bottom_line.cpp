// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/bottom_line.h"

#include "app/widgets/look.h"
#include "app/window/said_label.h"
#include "app/wording/tongue.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace window {

BottomLine::BottomLine(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("bottomLine"));
    setAttribute(Qt::WA_StyledBackground);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 4, 10, 4);
    column->setSpacing(2);
    notKept_ = new QLabel(this);
    notKept_->setObjectName(QStringLiteral("notKept"));
    notKept_->setWordWrap(true);
    notKept_->hide();
    column->addWidget(notKept_);
    readOut_ = new QLabel(this);
    readOut_->setObjectName(QStringLiteral("readOut"));
    readOut_->setText(QStringLiteral(" "));
    column->addWidget(readOut_);
    auto* row = new QHBoxLayout;
    said_ = new SaidLabel(this);
    said_->setObjectName(QStringLiteral("said"));
    row->addWidget(said_, 1);
    running_ = new QLabel(this);
    running_->setProperty("voice", "second");
    bar_ = new QProgressBar(this);
    bar_->setFixedWidth(160);
    bar_->setRange(0, 100);
    bar_->setTextVisible(false);
    bar_->setAccessibleName(tr("How far it is"));
    stop_ = new QToolButton(this);
    stop_->setText(tr("Stop"));
    stop_->setToolTip(tr("Stop what is running (Escape)"));
    for (QWidget* widget : std::initializer_list<QWidget*>{running_, bar_, stop_}) {
        row->addWidget(widget);
        widget->hide();
    }
    column->addLayout(row);

    // As tall without a job as with one: else the chart would move with each.
    said_->setMinimumHeight(stop_->sizeHint().height());
}

void BottomLine::watch(jobs::JobRunner& jobs) {
    watched_.push_back(&jobs);
    connect(stop_, &QToolButton::clicked, &jobs, &jobs::JobRunner::cancelAll);
    connect(&jobs, &jobs::JobRunner::started, this, [this](const QString& title) {
        running_->setText(title);
        bar_->setValue(0);
        showRunning();
    });
    connect(&jobs, &jobs::JobRunner::told, this, [this](const QString& part, double share) {
        running_->setText(wording::Tongue::ofCore(part.toStdString()));
        bar_->setValue(static_cast<int>(std::lround(100.0 * share)));
    });
    // What one job ends with may have started the next already.
    connect(&jobs, &jobs::JobRunner::finished, this, &BottomLine::showRunning);
}

void BottomLine::showRunning() {
    const bool isRunning = std::ranges::any_of(watched_, &jobs::JobRunner::isBusy);
    for (QWidget* widget : std::initializer_list<QWidget*>{running_, bar_, stop_}) {
        widget->setVisible(isRunning);
    }
}

void BottomLine::showNotKept(const QString& sentence) {
    notKept_->setText(sentence);
    notKept_->setVisible(!sentence.isEmpty());
}

void BottomLine::say(const QString& sentence, bool isWrong) {
    widgets::setLook(*said_, "wrong", isWrong);
    said_->say(sentence);
    said_->setAccessibleName(sentence);
    QAccessibleEvent told(said_, QAccessible::Alert); // So that a screen reader says it, too.
    QAccessible::updateAccessibility(&told);
}

QString BottomLine::said() const {
    return said_->said();
}

void BottomLine::showReadOut(const QString& line) {
    readOut_->setText(line.isEmpty() ? QStringLiteral(" ") : line);
}

} // namespace window
