// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_panel.h"

#include "app/days/step_head.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

namespace days {

struct StepPanel::Step {
    StepHead* head = nullptr;
    QWidget* body = nullptr;
};

StepPanel::StepPanel(QWidget* parent) : QWidget(parent) {
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("steps"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* column = new QWidget(scroll);
    column->setObjectName(QStringLiteral("stepColumn"));
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(8, 4, 8, 16);
    layout->setSpacing(0);
    layout->addStretch(1);
    scroll->setWidget(column);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
}

StepPanel::~StepPanel() = default;

int StepPanel::addStep(const QString& title, QWidget* body) {
    const int position = count();
    auto* scroll = findChild<QScrollArea*>(QStringLiteral("steps"));
    auto* layout = static_cast<QVBoxLayout*>(scroll->widget()->layout());
    auto step = std::make_unique<Step>();
    step->head = new StepHead(title, QStringLiteral("Alt+%1").arg(position + 1), scroll->widget());
    step->body = body;
    body->setParent(scroll->widget());
    body->hide();
    layout->insertWidget(2 * position, step->head);
    layout->insertWidget(2 * position + 1, body);
    connect(step->head, &QAbstractButton::clicked, this,
            [this, position] { openStep(open_ == position ? -1 : position); });
    steps_.push_back(std::move(step));
    return position;
}

void StepPanel::setState(int step, const QString& line, bool isStale) {
    steps_.at(static_cast<std::size_t>(step))->head->setState(line, isStale);
}

void StepPanel::openStep(int step) {
    open_ = step >= 0 && step < count() ? step : -1;
    for (int i = 0; i < count(); ++i) {
        const Step& each = *steps_[static_cast<std::size_t>(i)];
        each.head->setChecked(i == open_);
        each.head->update();
        each.body->setVisible(i == open_);
    }
    if (open_ < 0) {
        return;
    }
    // Once the layout has settled: the head to the top, so that as much as can be of the step
    // shows.
    QTimer::singleShot(0, this, [this] {
        if (open_ >= 0) {
            auto* scroll = findChild<QScrollArea*>(QStringLiteral("steps"));
            const Step& opened = *steps_[static_cast<std::size_t>(open_)];
            const int bottom = opened.body->geometry().bottom();
            const int top = opened.head->geometry().top();
            QScrollBar* bar = scroll->verticalScrollBar();
            if (bottom > bar->value() + scroll->viewport()->height() || top < bar->value()) {
                bar->setValue(top);
            }
        }
    });
    emit stepOpened(open_);
}

int StepPanel::openStep() const {
    return open_;
}

int StepPanel::count() const {
    return static_cast<int>(steps_.size());
}

QString StepPanel::stateOf(int step) const {
    return steps_.at(static_cast<std::size_t>(step))->head->state();
}

} // namespace days
