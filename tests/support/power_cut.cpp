// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/power_cut.h"

#include <algorithm>
#include <fstream>
#include <random>
#include <set>
#include <sstream>
#include <vector>

namespace support {

namespace {

/// One file on the disk, and what it was told since its last sync.
struct Waiting {
    bool isMade = false;
    bool isRemoved = false;
    std::vector<DiskChange> changes;
};

/// What of a write reaches the disk where the power goes in the middle of it: whole sectors, in any
/// order.
template <class Lasts>
void tear(const DiskChange& change, std::string& content, const Lasts& lasts) {
    constexpr std::size_t sector = 512;
    for (std::size_t from = 0; from < change.bytes.size(); from += sector) {
        if (lasts()) {
            const std::string part = change.bytes.substr(from, sector);
            const std::size_t at = static_cast<std::size_t>(change.at) + from;
            content.resize(std::max(content.size(), at + part.size()));
            content.replace(at, part.size(), part);
        }
    }
}

void apply(const DiskChange& change, std::string& content) {
    const auto at = static_cast<std::size_t>(change.at);
    if (change.kind == DiskChange::Kind::truncate) {
        content.resize(at);
        return;
    }
    content.resize(std::max(content.size(), at + change.bytes.size()));
    content.replace(at, change.bytes.size(), change.bytes);
}

class Disk {
public:
    explicit Disk(Files files) : files_(std::move(files)) {}

    void take(const DiskChange& change) {
        const std::string name = std::filesystem::path(change.file).filename();
        Waiting& waiting = waiting_[name];
        switch (change.kind) {
        case DiskChange::Kind::create:
            waiting.isMade = true;
            return;
        case DiskChange::Kind::write:
        case DiskChange::Kind::truncate:
            waiting.changes.push_back(change);
            return;
        case DiskChange::Kind::sync:
            for (const DiskChange& one : waiting.changes) {
                apply(one, files_[name]);
            }
            waiting_.erase(name);
            return;
        case DiskChange::Kind::remove:
            if (change.syncsFolder) {
                files_.erase(name);
                waiting_.erase(name);
            } else {
                waiting.isRemoved = true;
            }
            return;
        }
    }
    /// \param lasts asked for each change that was not synced.
    template <class Lasts>
    Files cut(const Lasts& lasts, bool isTorn) {
        for (const auto& [name, waiting] : waiting_) {
            if (waiting.isMade && !files_.contains(name) && !lasts()) {
                continue;
            }
            for (const DiskChange& one : waiting.changes) {
                if (isTorn && one.kind == DiskChange::Kind::write) {
                    tear(one, files_[name], lasts);
                } else if (lasts()) {
                    apply(one, files_[name]);
                }
            }
            if (waiting.isRemoved && lasts()) {
                files_.erase(name);
            }
        }
        return std::move(files_);
    }

private:
    Files files_;
    std::map<std::string, Waiting> waiting_;
};

} // namespace

Files filesIn(const std::filesystem::path& folder) {
    Files files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            std::ostringstream text;
            text << std::ifstream(entry.path(), std::ios::binary).rdbuf();
            files[entry.path().filename()] = text.str();
        }
    }
    return files;
}

void layFiles(const Files& files, const std::filesystem::path& folder) {
    std::set<std::filesystem::path> others;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (!files.contains(entry.path().filename())) {
            others.insert(entry.path());
        }
    }
    for (const auto& other : others) {
        std::filesystem::remove(other);
    }
    for (const auto& [name, content] : files) {
        std::ofstream(folder / name, std::ios::binary) << content;
    }
}

Files afterPowerCut(Files before, std::span<const DiskChange> changes, Unsynced unsynced,
                    std::uint64_t seed) {
    Disk disk(std::move(before));
    for (const DiskChange& change : changes) {
        disk.take(change);
    }
    std::mt19937_64 random(seed);
    const bool isByChance = unsynced == Unsynced::some || unsynced == Unsynced::torn;
    return disk.cut([&] { return unsynced == Unsynced::kept || (isByChance && random() % 2 == 0); },
                    unsynced == Unsynced::torn);
}

} // namespace support
