// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_folder.h"

#include "core/base/disk.h"
#include "core/base/leftovers.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <utility>

#include <fcntl.h>

namespace base {

namespace fs = std::filesystem;

namespace {

/// True where somebody stands in the folder: exchanged, it would be gone under his feet.
bool isUnderfoot(const fs::path& folder) {
    std::error_code fault;
    for (fs::path at = fs::current_path(fault); !fault && !at.empty(); at = at.parent_path()) {
        if (fs::equivalent(at, folder, fault) || at == at.parent_path()) {
            return at != at.parent_path();
        }
    }
    return false;
}

/// The folders above `folder` that are not there, the highest first.
std::vector<fs::path> missingAbove(const fs::path& folder) {
    std::vector<fs::path> missing;
    std::error_code fault;
    for (fs::path at = folder.parent_path(); !at.empty() && !fs::exists(at, fault);
         at = at.parent_path()) {
        missing.insert(missing.begin(), at);
    }
    return missing;
}

std::vector<std::string> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    std::error_code fault;
    for (fs::directory_iterator entry(folder, fault); !fault && entry != fs::directory_iterator();
         entry.increment(fault)) {
        names.push_back(entry->path().filename().string());
    }
    std::ranges::sort(names);
    return names;
}

} // namespace

PendingFolder::PendingFolder(fs::path wanted, std::vector<std::string_view> ours,
                             std::string_view last)
    : wanted_(throughLinks(wanted.has_filename() ? wanted : wanted.parent_path())),
      ours_(std::move(ours)), last_(last) {}

PendingFolder::~PendingFolder() {
    if (isInPlace_) {
        return;
    }
    std::error_code ignored;
    fs::remove_all(beside_, ignored);
    for (; !made_.empty(); made_.pop_back()) {
        fs::remove(made_.back(), ignored); // only where nobody put anything into it meanwhile
    }
}

bool PendingFolder::isOurs(const std::string& name) const {
    return std::ranges::find(ours_, name) != ours_.end();
}

bool PendingFolder::holdsOnlyOurs() const {
    return std::ranges::all_of(namesIn(wanted_),
                               [this](const std::string& name) { return isOurs(name); });
}

Result<void> PendingFolder::lookAtOlder() const {
    for (const std::string& name : namesIn(wanted_)) {
        std::error_code fault;
        if (isOurs(name) && !fs::is_regular_file(fs::symlink_status(wanted_ / name, fault))) {
            return fail(ErrorKind::unwritableOutput, "that is no regular file",
                        (wanted_ / name).string(), "take it away, or name another folder");
        }
    }
    return {};
}

Result<void> PendingFolder::begin() {
    std::error_code fault;
    const bool isThere = fs::exists(wanted_, fault);
    if (isThere && !fs::is_directory(wanted_, fault)) {
        return fail(ErrorKind::unwritableOutput, "the folder cannot be made", wanted_.string(),
                    "a file of this name is there: choose another name");
    }
    if (auto looked = lookAtOlder(); !looked) {
        return looked;
    }
    made_ = missingAbove(wanted_);
    fs::create_directories(wanted_.parent_path(), fault);
    sweepLeftovers(wanted_.parent_path());
    if (isThere) {
        sweepLeftovers(wanted_);
    }
    isExchanged_ = !isThere || (holdsOnlyOurs() && !isUnderfoot(wanted_));
    beside_ = besideName(wanted_);
    if (isExchanged_ && fs::create_directory(beside_, fault)) {
        return {};
    }
    isExchanged_ = false;
    beside_ = besideName(wanted_ / wanted_.filename());
    if (!isThere || !fs::create_directory(beside_, fault)) {
        return fail(ErrorKind::unwritableOutput, "the folder cannot be made", wanted_.string(),
                    "choose a place where you may write");
    }
    return {};
}

bool PendingFolder::exchange() {
    std::error_code fault;
    if (!fs::exists(wanted_, fault) || fs::is_empty(wanted_, fault)) {
        return ::rename(beside_.c_str(), wanted_.c_str()) == 0;
    }
    fs::permissions(beside_, fs::status(wanted_, fault).permissions(), fault);
    if (::renameat2(AT_FDCWD, beside_.c_str(), AT_FDCWD, wanted_.c_str(), RENAME_EXCHANGE) != 0) {
        return false;
    }
    // Under the name beside now lies the older set. What somebody laid there meanwhile stays.
    for (const std::string& name : namesIn(beside_)) {
        std::error_code ignored;
        isOurs(name) ? static_cast<void>(fs::remove(beside_ / name, ignored))
                     : fs::rename(beside_ / name, wanted_ / name, ignored);
    }
    fs::remove(beside_, fault);
    return true;
}

Result<void> PendingFolder::moveIn(const std::string& name) {
    if (::rename((beside_ / name).c_str(), (wanted_ / name).c_str()) != 0) {
        return std::unexpected(cannotWrite(wanted_ / name, errno));
    }
    return {};
}

Result<void> PendingFolder::moveIn() {
    std::error_code fault;
    fs::create_directory(wanted_, fault);
    fs::remove(wanted_ / last_, fault);
    syncFolder(wanted_);
    const std::vector<std::string> names = namesIn(beside_);
    for (const std::string_view name : ours_) {
        if (name != last_ && !std::ranges::binary_search(names, name)) {
            fs::remove(wanted_ / name, fault); // of an older set: it would be taken for new
        }
    }
    for (const std::string& name : names) {
        if (name != last_) {
            if (auto moved = moveIn(name); !moved) {
                return moved;
            }
        }
    }
    syncFolder(wanted_);
    if (auto moved = moveIn(last_); !moved) {
        return moved;
    }
    syncFolder(wanted_);
    fs::remove(beside_, fault);
    return {};
}

Result<void> PendingFolder::putInPlace() {
    for (const std::string& name : namesIn(beside_)) {
        takeModeOf(wanted_ / name, beside_ / name);
    }
    syncFolder(beside_);
    if (!isExchanged_ || !exchange()) {
        if (auto moved = moveIn(); !moved) {
            return moved;
        }
    }
    isInPlace_ = true;
    syncFolder(wanted_.parent_path());
    for (const fs::path& folder : made_) {
        syncFolder(folder.parent_path());
    }
    return {};
}

} // namespace base
