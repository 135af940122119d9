// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/top_line.h"

#include "app/wording/words.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QShortcut>
#include <QToolButton>

namespace window {

using preferences::UnitSystem;

TopLine::TopLine(open_water::OpenWater& open, preferences::Preferences& preferences,
                 QWidget* parent)
    : QWidget(parent), open_(open), preferences_(preferences) {
    setObjectName(QStringLiteral("topLine"));
    setAttribute(Qt::WA_StyledBackground);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 6, 10, 6);
    name_ = new QLabel(this);
    name_->setObjectName(QStringLiteral("waterName"));
    row->addWidget(name_, 1);

    days_ = new QButtonGroup(this);
    const std::array titles{tr("Survey day"), tr("Tomorrow"), tr("Looking back")};
    for (int day = 0; day < 3; ++day) {
        QToolButton* button =
            addButton(titles[static_cast<std::size_t>(day)], tr("Ctrl+%1").arg(day + 1));
        button->setCheckable(true);
        button->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(day + 1)));
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
    undo_->setShortcut(QKeySequence::Undo);
    connect(undo_, &QToolButton::clicked, &open_.undoStack(), &QUndoStack::undo);
    redo_ = addButton(tr("Redo"), {});
    redo_->setShortcut(QKeySequence(QStringLiteral("Ctrl+Y")));
    connect(redo_, &QToolButton::clicked, &open_.undoStack(), &QUndoStack::redo);

    layersMenu_ = addMenu(tr("On the chart"), tr("What the chart shows"), QStringLiteral("F6"));
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

void TopLine::showDay(int day) {
    days_->button(day)->setChecked(true);
}

void TopLine::refresh() {
    const wording::Words words(preferences_.units());
    const auto water = open_.water();
    const QString name = QString::fromStdString(water->name);
    name_->setText(!open_.isOpen()  ? tr("Meremark")
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
}

} // namespace window
