// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/day_step.h"

#include "app/chart/palette.h"

#include <QLabel>
#include <QVBoxLayout>

namespace days {

widgets::AmountField* DayStep::addAmount(const AmountEntry& entry,
                                         const std::function<void(const QString&)>& enter) {
    auto* holder = new QWidget(this);
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* field = new widgets::AmountField(entry.isRight, entry.whenEmpty, holder);
    auto* hint = new QLabel(entry.hint, holder);
    hint->setProperty("voice", "wrong");
    QPalette colours = hint->palette();
    colours.setColor(QPalette::WindowText, chart::Palette::screen().rust);
    hint->setPalette(colours);
    hint->setWordWrap(true);
    hint->hide();
    column->addWidget(field);
    column->addWidget(hint);
    holder->setFocusProxy(field);
    addField(entry.label, holder, entry.help);
    field->setAccessibleName(entry.label);
    connect(field, &widgets::AmountField::wrongChanged, hint, &QWidget::setVisible);
    connect(field, &widgets::AmountField::entered, this, enter);
    return field;
}

} // namespace days
