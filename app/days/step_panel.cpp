// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_panel.h"

#include "app/days/first_hint.h"
#include "app/days/step_head.h"
#include "app/widgets/look.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

namespace days {

namespace {

/// Below this, in lines of text, the heads give way so that the open step has room.
constexpr int roomyLines = 34;

/// Where the next key belongs: what the step says itself, else its first control.
QWidget* firstControl(QWidget& body) {
    // Also before the window is shown.
    const auto takesKeys = [&body](const QWidget* widget) {
        return widget->isVisibleTo(&body) && widget->isEnabled() &&
               (widget->focusPolicy() & Qt::TabFocus) != 0;
    };
    auto* named = body.property(keysGoTo).value<QWidget*>();
    if (named != nullptr && takesKeys(named)) {
        return named;
    }
    for (QWidget* next = body.nextInFocusChain(); next != &body; next = next->nextInFocusChain()) {
        if (body.isAncestorOf(next) && takesKeys(next)) {
            return next;
        }
    }
    return nullptr;
}

} // namespace

struct StepPanel::Step {
    StepHead* head = nullptr;
    QWidget* body = nullptr;
    int scrolled = 0;
};

StepPanel::StepPanel(QWidget* parent)
    : QWidget(parent), heads_(new QVBoxLayout), scroll_(new QScrollArea(this)) {
    heads_->setContentsMargins(8, 4, 8, 0);
    heads_->setSpacing(0);
    scroll_->setObjectName(QStringLiteral("steps"));
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // The room for it is kept, so that nothing is laid anew when a list grows by a row.
    scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    scroll_->setFocusPolicy(Qt::NoFocus);
    QScrollBar* bar = scroll_->verticalScrollBar();
    connect(bar, &QScrollBar::rangeChanged, this, [bar](int least, int most) {
        if (const bool isIdle = most <= least; isIdle != bar->property("idle").toBool()) {
            widgets::setLook(*bar, "idle", isIdle);
        }
    });
    auto* column = new QWidget(scroll_);
    column->setObjectName(QStringLiteral("stepColumn"));
    bodies_ = new QVBoxLayout(column);
    bodies_->setContentsMargins(8, 0, 8, 16);
    bodies_->setSpacing(0);
    bodies_->addStretch(1);
    scroll_->setWidget(column);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    outer->addLayout(heads_);
    outer->addWidget(scroll_, 1);
}

StepPanel::~StepPanel() = default;

int StepPanel::addStep(const QString& title, QWidget* body) {
    const int position = count();
    auto step = std::make_unique<Step>();
    step->head = new StepHead(title, QStringLiteral("Alt+%1").arg(position + 1), this);
    step->body = body;
    body->setParent(scroll_->widget());
    body->hide();
    heads_->addWidget(step->head);
    bodies_->insertWidget(position, body);
    // The keys go from head to head and then into what is open.
    if (position > 0) {
        setTabOrder(steps_.back()->head, step->head);
    }
    connect(step->head, &QAbstractButton::clicked, this,
            [this, position] { openByHand(position); });
    steps_.push_back(std::move(step));
    return position;
}

void StepPanel::setHint(FirstHint* hint) {
    hint_ = hint;
    layout()->addWidget(hint);
}

void StepPanel::setState(int step, const QString& line, bool isStale) {
    steps_.at(static_cast<std::size_t>(step))->head->setState(line, isStale);
}

void StepPanel::openByHand(int step) {
    openStep(step);
    giveKeys();
}

void StepPanel::giveKeys() {
    QWidget* control =
        open_ < 0 ? nullptr : firstControl(*steps_[static_cast<std::size_t>(open_)]->body);
    if (control != nullptr) {
        control->setFocus(Qt::ShortcutFocusReason);
    }
}

void StepPanel::openStep(int step) {
    const int before = open_;
    open_ = step >= 0 && step < count() ? step : -1;
    if (before >= 0 && before != open_) {
        steps_[static_cast<std::size_t>(before)]->scrolled = scroll_->verticalScrollBar()->value();
    }
    for (int i = 0; i < count(); ++i) {
        const Step& each = *steps_[static_cast<std::size_t>(i)];
        each.head->setChecked(i == open_);
        each.body->setVisible(i == open_);
    }
    if (open_ < 0) {
        return;
    }
    if (before != open_) {
        // Once the layout has settled.
        QTimer::singleShot(0, this, [this, opened = open_] {
            if (open_ == opened) {
                scroll_->verticalScrollBar()->setValue(
                    steps_[static_cast<std::size_t>(opened)]->scrolled);
            }
        });
    }
    emit stepOpened(open_);
}

int StepPanel::openStep() const {
    return open_;
}

int StepPanel::count() const {
    return static_cast<int>(steps_.size());
}

QString StepPanel::titleOf(int step) const {
    return steps_.at(static_cast<std::size_t>(step))->head->text();
}

QString StepPanel::stateOf(int step) const {
    return steps_.at(static_cast<std::size_t>(step))->head->state();
}

void StepPanel::enterEvent(QEnterEvent* event) {
    QWidget::enterEvent(event);
    setHeadsStill(true);
}

void StepPanel::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    setHeadsStill(false);
}

void StepPanel::setHeadsStill(bool areStill) {
    for (const auto& step : steps_) {
        step->head->setStill(areStill);
    }
}

void StepPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isLow = height() < roomyLines * fontMetrics().height();
    for (const auto& step : steps_) {
        step->head->setTight(isLow);
    }
    if (hint_ != nullptr) {
        hint_->setHasRoom(!isLow);
    }
}

} // namespace days
