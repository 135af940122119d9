// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_body.h"

#include "app/widgets/at_once.h"
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

namespace days {

namespace {

constexpr int labelWidth = 112; // of most labels, so that the fields of a step begin alike
constexpr int belowShown = 8;   // left below what is brought into view

} // namespace

StepBody::StepBody(QWidget* parent) : QWidget(parent), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(10, 8, 4, 12);
    column_->setSpacing(8);
}

QLabel* StepBody::addWords() {
    auto* label = new QLabel(this);
    label->setProperty("voice", "second");
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->hide();
    addWide(label);
    return label;
}

QLabel* StepBody::addWarning() {
    QLabel* label = addWords();
    label->setProperty("voice", "wrong");
    return label;
}

void StepBody::setWords(QLabel* label, const QString& words) {
    label->setText(words);
    label->setVisible(!words.isEmpty());
}

QLabel* StepBody::addHeading(const QString& words) {
    auto* label = new QLabel(words, this);
    label->setProperty("voice", "heading");
    addWide(label);
    return label;
}

void StepBody::addField(const QString& label, QWidget* field, const QString& help) {
    if (form_ == nullptr) {
        form_ = new QFormLayout;
        form_->setContentsMargins(0, 0, 0, 0);
        form_->setHorizontalSpacing(10);
        form_->setVerticalSpacing(6);
        form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
        form_->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        column_->addLayout(form_);
    }
    field->setToolTip(help);
    field->setAccessibleName(label);
    auto* name = new QLabel(label, this);
    name->setToolTip(help);
    name->setMinimumWidth(labelWidth);
    form_->addRow(name, field);
}

void StepBody::setFieldShown(QWidget* field, bool isShown) {
    for (QFormLayout* form : findChildren<QFormLayout*>()) {
        if (form->indexOf(field) >= 0) {
            form->setRowVisible(field, isShown);
        }
    }
}

void StepBody::addRow(const std::vector<QWidget*>& widgets) {
    form_ = nullptr;
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    for (QWidget* widget : widgets) {
        row->addWidget(widget);
    }
    row->addStretch(1);
    column_->addLayout(row);
}

void StepBody::addWide(QWidget* widget) {
    form_ = nullptr;
    column_->addWidget(widget);
}

void StepBody::bringIntoView(QWidget* widget) {
    QTimer::singleShot(0, widget, [widget] {
        for (QWidget* up = widget->parentWidget(); up != nullptr; up = up->parentWidget()) {
            if (auto* scroll = qobject_cast<QScrollArea*>(up)) {
                scroll->ensureWidgetVisible(widget, 0, belowShown);
                return;
            }
        }
    });
}

QPushButton* StepBody::makeButton(const QString& words, const QString& key, const QString& help,
                                  const std::function<void()>& act) {
    auto* button = new QPushButton(words, this);
    button->setShortcut(QKeySequence(key));
    widgets::actAtOnce(*button);
    button->setToolTip(key.isEmpty() ? help : QStringLiteral("%1 (%2)").arg(help, key));
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

} // namespace days
