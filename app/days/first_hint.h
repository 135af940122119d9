// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/preferences.h"

#include <QFrame>

namespace days {

/// What cannot be seen on a day's page and is good to know the first time: a sentence or two below
/// its steps, until it is put away, on this day and for good.
class FirstHint : public QFrame {
    Q_OBJECT
public:
    /// \param name what is kept once it is put away; one a hint.
    FirstHint(preferences::Preferences& preferences, const QString& name, const QString& words,
              QWidget* parent = nullptr);

    /// Where the page is low, the open step goes first and no hint is shown.
    void setHasRoom(bool hasRoom);

private:
    void showOrHide();

    QString name_;
    bool hasRoom_ = true;
};

} // namespace days
