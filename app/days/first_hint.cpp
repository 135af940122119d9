// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/first_hint.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace days {

FirstHint::FirstHint(preferences::Preferences& preferences, const QString& name,
                     const QString& words, QWidget* parent)
    : QFrame(parent), name_(name) {
    setObjectName(QStringLiteral("firstHint"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    auto* text = new QLabel(words, this);
    text->setWordWrap(true);
    row->addWidget(text, 1);
    auto* away = new QToolButton(this);
    away->setText(tr("Put away"));
    away->setToolTip(tr("Not to be shown again; the menu View brings all hints back"));
    row->addWidget(away, 0, Qt::AlignTop);
    connect(away, &QToolButton::clicked, this,
            [this, &preferences] { preferences.putAway(name_); });
    connect(&preferences, &preferences::Preferences::hintsChanged, this, &FirstHint::showOrHide);
    showOrHide();
}

void FirstHint::setHasRoom(bool hasRoom) {
    hasRoom_ = hasRoom;
    showOrHide();
}

void FirstHint::showOrHide() {
    setVisible(hasRoom_ && !preferences::Preferences::isPutAway(name_));
}

} // namespace days
