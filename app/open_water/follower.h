// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/keeper.h"

#include <QObject>
#include <QTimer>

#include <chrono>

namespace open_water {

/// Watches a water that somebody else may write and we only look at: every few seconds asks whether
/// he has saved something, or has let the water go. What fails is said once and tried again, later
/// and later, until it works.
class Follower : public QObject {
    Q_OBJECT
public:
    explicit Follower(Keeper& keeper, QObject* parent = nullptr);

    /// To be called for each water that is opened: watches it where it cannot be changed here.
    void watch();
    void setInterval(std::chrono::milliseconds interval);
    /// Asks now; done by itself every few seconds.
    void look();
    /// The water could not be opened again.
    void takeFailure(const base::Error& error);
    /// How long until it asks again.
    [[nodiscard]] std::chrono::milliseconds wait() const { return timer_.intervalAsDuration(); }

signals:
    /// What is shown is no longer what is saved, or may be changed here from now on: it is to be
    /// opened again. Not while something here is unkept, which opening would lose.
    void isToBeOpenedAgain();
    /// What is shown can no longer be followed. Said once, not with each try.
    void failed(const base::Error& error);

private:
    Keeper& keeper_;
    QTimer timer_;
    std::chrono::milliseconds usual_; ///< While all goes well.
    bool hasFailed_ = false;
    bool hadOwner_ = false;
};

} // namespace open_water
