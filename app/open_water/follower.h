// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/keeper.h"

#include <QObject>
#include <QTimer>

#include <chrono>

namespace open_water {

/// Watches a water that somebody else may write and we only look at: every few seconds asks whether
/// he has saved something, or has let the water go.
class Follower : public QObject {
    Q_OBJECT
public:
    explicit Follower(Keeper& keeper, QObject* parent = nullptr);

    /// To be called for each water that is opened: watches it where it cannot be changed here.
    void watch();
    void setInterval(std::chrono::milliseconds interval) { timer_.setInterval(interval); }
    /// Asks now; done by itself every few seconds.
    void look();

signals:
    /// What is shown is no longer what is saved, or may be changed here from now on: it is to be
    /// opened again. Not while something here is unkept, which opening would lose.
    void isToBeOpenedAgain();

private:
    Keeper& keeper_;
    QTimer timer_;
    bool hadOwner_ = false;
};

} // namespace open_water
