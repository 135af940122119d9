// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/write_right.h"

#include <utility>

namespace store {

base::Error inUseBy(const Owner& owner, const std::filesystem::path& path) {
    return {base::ErrorKind::waterInUse, owner.text() + " has this water open", path.string(),
            "close it there, then open it here again"};
}

WriteRight::WriteRight(const std::filesystem::path& path, Purpose purpose) : path_(path) {
    if (purpose == Purpose::looking) {
        refusal_ = Refusal::onlyLooking;
    } else {
        ask();
    }
}

void WriteRight::ask() {
    OwnerLock::Taken taken = OwnerLock::take(path_);
    if (auto* lock = std::get_if<OwnerLock>(&taken)) {
        lock_ = std::move(*lock);
    } else if (const auto* other = std::get_if<Owner>(&taken)) {
        owner_ = *other;
        refusal_ = Refusal::inUse;
    } else if (std::get<NoLock>(taken) == NoLock::closedToUs) {
        refusal_ = Refusal::closedToUs;
    }
}

void WriteRight::giveUp() {
    lock_.reset();
    if (refusal_ == Refusal::none) {
        refusal_ = Refusal::closedToUs;
    }
}

void WriteRight::leaveToNewer() {
    lock_.reset();
    refusal_ = Refusal::newerVersion;
}

base::Result<void> WriteRight::claim() {
    if (refusal_ == Refusal::none && !lock_) {
        ask();
        if (refusal_ == Refusal::closedToUs) {
            refusal_ = Refusal::none; // That may pass too; SQLite says whether it can save.
        }
    }
    switch (refusal_) {
    case Refusal::none:
        return {};
    case Refusal::inUse:
        return std::unexpected(inUseBy(owner_.value_or(Owner()), path_));
    case Refusal::newerVersion:
        return base::fail(base::ErrorKind::unwritableOutput,
                          "a newer version of Meremark keeps this water file", path_.string(),
                          "change it with that version, or save under another name");
    case Refusal::closedToUs:
        return base::fail(base::ErrorKind::unwritableOutput, "the water file may only be read",
                          path_.string(),
                          "allow writing to the file and its folder, or save under another name");
    case Refusal::onlyLooking:
        break;
    }
    return base::fail(base::ErrorKind::unwritableOutput,
                      "the water was opened to be looked at; nothing was changed", path_.string(),
                      "open it for writing");
}

} // namespace store
