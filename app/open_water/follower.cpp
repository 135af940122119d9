// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/follower.h"

namespace open_water {

namespace {

constexpr std::chrono::seconds interval{2};

} // namespace

Follower::Follower(Keeper& keeper, QObject* parent) : QObject(parent), keeper_(keeper) {
    timer_.setInterval(interval);
    connect(&timer_, &QTimer::timeout, this, &Follower::look);
}

void Follower::watch() {
    hadOwner_ = keeper_.owner().has_value();
    keeper_.hasFile() && keeper_.isReadOnly() ? timer_.start() : timer_.stop();
}

void Follower::look() {
    if (!keeper_.unkept().empty()) {
        return;
    }
    const auto changed = keeper_.hasChanged();
    const bool isFree = hadOwner_ && !store::ownerOf(keeper_.path().toStdString());
    // A file that was moved away is said where something is to be kept; what is shown stays.
    if ((changed && *changed) || isFree) {
        emit isToBeOpenedAgain();
    }
}

} // namespace open_water
