// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copies.h"

#include "core/base/leftovers.h"
#include "core/base/whole_file.h"
#include "core/store/orphan_journal.h"
#include "core/store/save_mark.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "core/store/water_store.h"
#include "core/store/write_right.h"

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <set>
#include <utility>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace fs = std::filesystem;
using base::Result;

namespace {

constexpr std::string_view kind = ".gpkg";

/// "2026-11-27T23-08-05.120Z.gpkg": a moment that every file system takes for a name.
std::string nameOf(units::Moment taken) {
    std::string name = units::isoText(taken);
    std::ranges::replace(name, ':', '-');
    return name + std::string(kind);
}

std::optional<units::Moment> momentOf(const fs::path& file) {
    std::string text = file.stem().string();
    const std::size_t day = text.find('T');
    if (file.extension() != kind || day == std::string::npos) {
        return std::nullopt;
    }
    std::replace(text.begin() + static_cast<std::ptrdiff_t>(day), text.end(), '-', ':');
    return units::momentFrom(text, units::Clock());
}

/// Writes all of `from` to `to`, which is not there, as it stands at one moment.
Result<void> backUp(const fs::path& from, const fs::path& to) {
    auto source = Connection::open(from, Connection::Access::existing);
    auto target = source ? Connection::open(to, Connection::Access::create)
                         : Result<std::unique_ptr<Connection>>(std::unexpected(source.error()));
    if (!target) {
        return std::unexpected(target.error());
    }
    sqlite3_backup* backup =
        sqlite3_backup_init((*target)->handle(), "main", (*source)->handle(), "main");
    if (backup == nullptr) {
        (*target)->failWith(sqlite3_errcode((*target)->handle()));
        return (*target)->outcome();
    }
    constexpr int allPages = -1;
    int code = sqlite3_backup_step(backup, allPages);
    const int ended = sqlite3_backup_finish(backup);
    code = code == SQLITE_DONE ? ended : code;
    if (code != SQLITE_OK) {
        return std::unexpected(errorOf(code, sqlite3_errstr(code), from));
    }
    return {};
}

/// \return damagedWater where the database finds a fault in its pages.
Result<void> checkPages(const fs::path& file) {
    auto connection = Connection::open(file, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    {
        Statement check(**connection, "PRAGMA quick_check(1)");
        check.ask();
        if (const std::string said = check.next() ? check.text(0) : "ok"; said != "ok") {
            (*connection)->failDamaged(said);
        }
    }
    return (*connection)->outcome();
}

/// A whole copy of `from` as `to`, or nothing.
Result<void> copyWhole(const fs::path& from, const fs::path& to) {
    switch (stateOf(from)) {
    case FileState::current:
    case FileState::older:
    case FileState::newer:
        break;
    default: {
        auto opened = open(from, Purpose::looking); // says why not
        return opened ? base::fail(base::ErrorKind::waterInUse, "the water is just being saved",
                                   from.string(), "try again")
                      : Result<void>(std::unexpected(opened.error()));
    }
    }
    base::PendingFile pending(to);
    auto copied = backUp(from, pending.beside());
    if (copied) {
        copied = checkPages(pending.beside());
    }
    if (!copied) {
        base::Error error = std::move(copied.error());
        error.where = from.string();
        return std::unexpected(std::move(error));
    }
    return pending.putInPlace();
}

SaveMark markIn(const fs::path& file) {
    auto connection = Connection::open(file, Connection::Access::existing);
    return connection ? SaveMark::in(**connection) : SaveMark();
}

/// Keeps what cannot be copied since it is not whole, with the journal that belongs to it.
Result<void> putAside(const fs::path& water, units::Moment now) {
    std::string when = units::isoText(now);
    std::ranges::replace(when, ':', '-');
    const fs::path aside =
        water.parent_path() / fmt::format("{} (damaged, {}){}", water.stem().string(), when, kind);
    std::error_code fault;
    fs::create_hard_link(water, aside, fault);
    if (fault) {
        fs::copy_file(water, aside, fault);
    }
    if (fault) {
        return base::fail(base::ErrorKind::unwritableOutput,
                          "the damaged file cannot be kept beside", aside.string(),
                          "make room, or copy it away yourself");
    }
    fs::rename(water.string() + "-journal", aside.string() + "-journal", fault);
    return {};
}

} // namespace

std::vector<Copy> thinnedOut(const std::vector<Copy>& copies, units::Moment now,
                             const CopyRule& rule) {
    using std::chrono::hours;
    std::vector<Copy> gone;
    std::set<std::pair<std::chrono::seconds, std::int64_t>> taken;
    std::uintmax_t bytes = 0;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        const auto age = now - copies[i].taken;
        const std::chrono::seconds span = age < hours(24)       ? rule.between
                                          : age < hours(7 * 24) ? std::chrono::seconds(hours(24))
                                                                : hours(7 * 24);
        const bool isFirst = taken.emplace(span, copies[i].taken.time_since_epoch() / span).second;
        const bool hasRoom = bytes + copies[i].bytes <= rule.mostBytes;
        if (i == 0 || (isFirst && hasRoom)) {
            bytes += copies[i].bytes;
        } else {
            gone.push_back(copies[i]);
        }
    }
    return gone;
}

Copies::Copies(fs::path folder, CopyRule rule) : folder_(std::move(folder)), rule_(rule) {}

fs::path Copies::folderOf(const fs::path& water) const {
    std::error_code fault;
    const fs::path real = fs::weakly_canonical(water, fault);
    const fs::path& path = fault ? water : real;
    std::uint64_t sum = 14695981039346656037U; // FNV-1a (Fowler, Noll, Vo)
    for (const char c : path.string()) {
        sum = (sum ^ static_cast<unsigned char>(c)) * 1099511628211U;
    }
    return folder_ / fmt::format("{}-{:016x}", path.stem().string().substr(0, 100), sum);
}

std::vector<Copy> Copies::of(const fs::path& water) const {
    std::vector<Copy> copies;
    std::error_code fault;
    fs::directory_iterator entry(folderOf(water), fault);
    for (; !fault && entry != fs::directory_iterator(); entry.increment(fault)) {
        const auto taken = momentOf(entry->path());
        std::error_code none;
        if (taken && entry->is_regular_file(none)) {
            copies.push_back({entry->path(), *taken, entry->file_size(none)});
        }
    }
    std::ranges::sort(copies, std::greater(), &Copy::taken);
    return copies;
}

Result<Copy> Copies::take(const fs::path& water, units::Moment now) {
    const fs::path folder = folderOf(water);
    std::error_code fault;
    fs::create_directories(folder, fault);
    if (!fs::is_directory(folder, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "the folder for copies cannot be made",
                          folder.string(), "make room, or allow writing there");
    }
    fs::permissions(folder_, fs::perms::owner_all, fault); // what is fished where is nobody's else
    units::Moment taken = now;
    while (fs::exists(folder / nameOf(taken), fault)) {
        taken += std::chrono::milliseconds(1);
    }
    const fs::path file = folder / nameOf(taken);
    if (auto copied = copyWhole(water, file); !copied) {
        return std::unexpected(copied.error());
    }
    for (const Copy& gone : thinnedOut(of(water), now, rule_)) {
        if (gone.file != file) {
            fs::remove(gone.file, fault);
        }
    }
    return Copy{file, taken, fs::file_size(file, fault)};
}

Result<std::optional<Copy>> Copies::takeIfDue(const fs::path& water, units::Moment now) {
    const std::vector<Copy> known = of(water);
    // A clock that was set back makes nothing due for ever.
    const bool isRecent =
        !known.empty() && now >= known.front().taken && now - known.front().taken < rule_.between;
    if (isRecent || (!known.empty() && markIn(known.front().file) == markIn(water))) {
        return std::nullopt;
    }
    auto copy = take(water, now);
    return copy ? Result<std::optional<Copy>>(std::move(*copy)) : std::unexpected(copy.error());
}

Result<void> Copies::goBack(const Copy& copy, const fs::path& water, units::Moment now) {
    WriteRight right(water, Purpose::writing);
    if (auto claimed = right.claim(); !claimed) {
        return claimed;
    }
    if (auto whole = checkPages(copy.file); !whole) {
        return whole;
    }
    base::PendingFile pending(water);
    // Before the present one is copied: that may thin out this one.
    if (auto laid = backUp(copy.file, pending.beside()); !laid) {
        return laid;
    }
    std::error_code fault;
    if (fs::exists(water, fault)) {
        if (auto kept = take(water, now); !kept) {
            if (kept.error().kind == base::ErrorKind::waterInUse ||
                kept.error().kind == base::ErrorKind::unwritableOutput) {
                return std::unexpected(kept.error());
            }
            if (auto aside = putAside(water, now); !aside) {
                return aside;
            }
        }
    } else {
        removeJournalOf(water);
    }
    return pending.putInPlace();
}

fs::path usualCopiesFolder() {
    const auto said = [](const char* name) {
        const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe)
        return fs::path(value == nullptr ? "" : value);
    };
    const fs::path data = said("XDG_DATA_HOME");
    if (data.is_absolute()) {
        return data / "Meremark" / "Meremark" / "copies";
    }
    const fs::path home = said("HOME");
    return home.is_absolute() ? home / ".local" / "share" / "Meremark" / "Meremark" / "copies"
                              : fs::path();
}

Result<std::unique_ptr<WaterStore>> openWithCopy(const fs::path& path, Purpose purpose) {
    const fs::path folder = usualCopiesFolder();
    Copies copies(folder);
    return open(path, purpose, folder.empty() ? nullptr : &copies);
}

Result<CopyCounts> countsIn(const fs::path& water) {
    auto connection = Connection::open(water, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    CopyCounts counts;
    {
        const Reading reading(**connection);
        Statement row(**connection,
                      "SELECT (SELECT count(*) FROM survey_days), (SELECT "
                      "coalesce(sum(sounding_count), 0) FROM survey_days), (SELECT count(*) FROM "
                      "stays), (SELECT count(*) FROM fish), (SELECT count(*) FROM lead_line) + "
                      "(SELECT count(*) FROM weed_notes) + (SELECT count(*) FROM pinned_marks)");
        row.ask();
        const auto at = [&row](int column) {
            return static_cast<std::size_t>(std::max<std::int64_t>(row.wholeNumber(column), 0));
        };
        if (row.next()) {
            counts = {at(0), at(1), at(2), at(3), at(4)};
        }
    }
    if (auto outcome = (*connection)->outcome(); !outcome) {
        return std::unexpected(outcome.error());
    }
    return counts;
}

} // namespace store
