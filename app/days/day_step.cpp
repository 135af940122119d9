// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/day_step.h"

#include "app/edits/set_plan.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QVBoxLayout>

namespace days {

namespace {

constexpr double slowestBoat_m_s = 0.3;
constexpr double fastestBoat_m_s = 8.0;

} // namespace

widgets::AmountField* DayStep::addAmount(const AmountEntry& entry,
                                         const std::function<void(const QString&)>& enter) {
    auto* holder = new QWidget(this);
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* field = new widgets::AmountField(entry.isRight, entry.whenEmpty, holder);
    auto* hint = new QLabel(entry.hint, holder);
    hint->setProperty("voice", "wrong");
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

widgets::AmountField* DayStep::addBoatSpeed(const QString& help) {
    const auto typed = [this](const QString& text) -> std::optional<units::Speed> {
        const auto speed = wording::speedTyped(text, words().units());
        const bool isInRange = speed && speed->inMetresPerSecond() >= slowestBoat_m_s &&
                               speed->inMetresPerSecond() <= fastestBoat_m_s;
        return isInRange ? speed : std::nullopt;
    };
    return addAmount({tr("Boat speed"),
                      help,
                      [typed](const QString& text) { return typed(text).has_value(); },
                      {},
                      tr("a speed from 0.3 to 8 m/s, such as 3 kn")},
                     [this, typed](const QString& text) {
                         edits::setPlan(
                             context_.open, tr("Set boat speed"),
                             [&](marks::Plan& plan) { plan.tackle.boatSpeed = *typed(text); });
                         emit lineChanged();
                     });
}

} // namespace days
