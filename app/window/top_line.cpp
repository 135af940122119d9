// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/top_line.h"

#include "app/widgets/at_once.h"
#include "app/widgets/elided_label.h"
#include "app/wording/one_line.h"
#include "app/wording/words.h"

#include <QApplication>
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QShortcut>
#include <QTimer>
#include <QToolButton>

#include <algorithm>

namespace window {

using preferences::UnitSystem;

namespace {
constexpr double leastType = 8.0; // points
} // namespace

TopLine::TopLine(open_water::OpenWater& open, preferences::Preferences& preferences,
                 QWidget* parent)
    : QWidget(parent), open_(open), preferences_(preferences) {
    setObjectName(QStringLiteral("topLine"));
    setAttribute(Qt::WA_StyledBackground);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 6, 10, 6);
    name_ = new widgets::ElidedLabel(this);
    name_->setObjectName(QStringLiteral("waterName"));
    row->addWidget(name_, 100);

    days_ = new QButtonGroup(this);
    const std::array titles{tr("Survey day"), tr("Tomorrow"), tr("Looking back")};
    for (int day = 0; day < 3; ++day) {
        QToolButton* button =
            addButton(titles[static_cast<std::size_t>(day)], tr("Ctrl+%1").arg(day + 1));
        button->setCheckable(true);
        button->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(day + 1)));
        widgets::actAtOnce(*button);
        days_->addButton(button, day);
    }
    connect(days_, &QButtonGroup::idClicked, this, &TopLine::dayChosen);
    row->addStretch(1);

    level_ = new QLabel(this);
    level_->setToolTip(tr("The level that the plan expects, above chart level; change it under "
                          "Tomorrow, Conditions"));
    row->addWidget(level_);
    row->addSpacing(10);
    metres_ = addUnits(tr("m"), UnitSystem::metric);
    feet_ = addUnits(tr("ft"), UnitSystem::imperial);
    auto* other = new QShortcut(QKeySequence(QStringLiteral("Ctrl+U")), this);
    connect(other, &QShortcut::activated, this, [this] {
        preferences_.setUnits(preferences_.units() == UnitSystem::metric ? UnitSystem::imperial
                                                                         : UnitSystem::metric);
    });
    undo_ = addButton(tr("Undo"), {});
    undo_->setAccessibleName(undo_->text());
    undo_->setShortcut(QKeySequence::Undo);
    connect(undo_, &QToolButton::clicked, &open_.undoStack(), &QUndoStack::undo);
    redo_ = addButton(tr("Redo"), {});
    redo_->setAccessibleName(redo_->text());
    redo_->setShortcut(QKeySequence(QStringLiteral("Ctrl+Y")));
    widgets::actAtOnce(*undo_);
    widgets::actAtOnce(*redo_);
    connect(redo_, &QToolButton::clicked, &open_.undoStack(), &QUndoStack::redo);

    layersMenu_ = addMenu(tr("On the chart"), tr("What the chart shows"), QStringLiteral("F6"));
    viewMenu_ =
        addMenu(tr("View"), tr("Theme, type, and what of the water is seen"), QStringLiteral("F7"));
    waterMenu_ = addMenu(tr("File"), tr("New, open, export, help"), QStringLiteral("F10"));

    connect(&open_, &open_water::OpenWater::opened, this, &TopLine::refresh);
    connect(&open_, &open_water::OpenWater::changed, this, &TopLine::refresh);
    connect(&preferences_, &preferences::Preferences::unitsChanged, this, &TopLine::refresh);
    connect(&open_.undoStack(), &QUndoStack::indexChanged, this, &TopLine::refresh);
    refresh();
}

QToolButton* TopLine::addButton(const QString& text, const QString& help) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setToolTip(help);
    layout()->addWidget(button);
    return button;
}

QToolButton* TopLine::addUnits(const QString& sign, UnitSystem units) {
    QToolButton* button = addButton(sign, tr("Metres or feet, everywhere at once (Ctrl+U)"));
    button->setProperty("choice", "units");
    button->setCheckable(true);
    connect(button, &QToolButton::clicked, this, [this, units] {
        preferences_.setUnits(units);
        refresh();
    });
    return button;
}

QMenu* TopLine::addMenu(const QString& text, const QString& help, const QString& key) {
    QToolButton* button = addButton(text, tr("%1 (%2)").arg(help, key));
    auto* menu = new QMenu(button);
    button->setMenu(menu);
    button->setPopupMode(QToolButton::InstantPopup);
    connect(new QShortcut(QKeySequence(key), this), &QShortcut::activated, button,
            &QToolButton::showMenu);
    return menu;
}

void TopLine::fit() {
    if (isFitting_ || !isVisible()) {
        return;
    }
    isFitting_ = true;
    setFont(QApplication::font());
    level_->setVisible(open_.isOpen());
    sayUndo(true);
    const auto isTooWide = [this] {
        layout()->invalidate();
        return layout()->minimumSize().width() + wholeNameLess() > width();
    };
    if (isTooWide()) {
        level_->hide();
    }
    if (isTooWide()) {
        sayUndo(false);
    }
    while (isTooWide() && font().pointSizeF() > leastType) {
        QFont smaller = font();
        smaller.setPointSizeF(smaller.pointSizeF() - 0.5);
        setFont(smaller);
    }
    isFitting_ = false;
}

int TopLine::wholeNameLess() const {
    constexpr int longest_pixels = 260; // longer names are cut
    return std::max(
        std::min(name_->sizeHint().width(), longest_pixels) - name_->minimumSizeHint().width(), 0);
}

void TopLine::sayUndo(bool inWords) {
    undo_->setText(inWords ? tr("Undo") : QStringLiteral("\u21B6"));
    redo_->setText(inWords ? tr("Redo") : QStringLiteral("\u21B7"));
}

void TopLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void TopLine::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fit();
}

void TopLine::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) {
        QTimer::singleShot(0, this, &TopLine::fit); // once the buttons have their letters, too
    }
}

void TopLine::showDay(int day) {
    days_->button(day)->setChecked(true);
}

void TopLine::refresh() {
    const wording::Words words(preferences_.units());
    const auto water = open_.water();
    const QString name = wording::oneLine(water->name);
    name_->setWhole(!open_.isOpen()  ? tr("Meremark")
                    : name.isEmpty() ? tr("Water without a name")
                                     : name);
    level_->setText(open_.isOpen()
                        ? tr("level %1").arg(words.levelChange(water->plan.day.levelChange))
                        : QString());
    metres_->setChecked(words.isMetric());
    feet_->setChecked(!words.isMetric());
    const QUndoStack& stack = open_.undoStack();
    undo_->setEnabled(stack.canUndo());
    undo_->setToolTip(tr("Undo: %1 (Ctrl+Z)").arg(stack.undoText()));
    redo_->setEnabled(stack.canRedo());
    redo_->setToolTip(tr("Redo: %1 (Ctrl+Y)").arg(stack.redoText()));
    fit();
}

} // namespace window
