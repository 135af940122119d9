// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/water_store.h"

#include "core/base/leftovers.h"
#include "core/base/whole_file.h"
#include "core/store/copies.h"
#include "core/store/geopackage.h"
#include "core/store/orphan_journal.h"
#include "core/store/owner_lock.h"
#include "core/store/schema/steps.h"
#include "core/store/spatial_functions.h"
#include "core/store/sqlite_store.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"

#include <chrono>
#include <cstdint>
#include <string_view>
#include <utility>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace {

constexpr std::size_t headSize = 100; ///< The head of every SQLite file.

/// What the first bytes of a file tell.
enum class Head { unreadable, foreign, brokenOff, geoPackage };

/// A number of `size` bytes in a head, the highest byte first.
std::uint64_t numberAt(std::string_view head, std::size_t at, std::size_t size) {
    std::uint64_t number = 0;
    for (std::size_t i = 0; i < size; ++i) {
        number = number * 256 + static_cast<unsigned char>(head[at + i]);
    }
    return number;
}

/// True where the file is shorter than its head says (SQLite file format, 1.3). SQLite itself
/// takes a last page that is cut for one that ends in zeros. To be asked in a transaction: a save
/// that another program is at, or that was broken off, writes the head before the last page.
bool isCut(const Connection& connection) {
    constexpr std::size_t pageSizeAt = 16;
    constexpr std::size_t pageCountAt = 28;
    const auto head = connection.firstBytes(headSize);
    const auto size = connection.size();
    if (!head || head->size() < headSize || !size) {
        return true;
    }
    const std::uint64_t written = numberAt(*head, pageSizeAt, 2);
    const std::uint64_t pageSize = written == 1 ? 65536 : written;
    return *size < numberAt(*head, pageCountAt, 4) * pageSize;
}

Head headOf(const Connection& connection) {
    const auto head = connection.firstBytes(headSize);
    if (!head) {
        return Head::unreadable;
    }
    constexpr std::string_view magic("SQLite format 3\0", 16);
    if (!head->starts_with(magic)) {
        return Head::foreign;
    }
    if (head->size() < headSize) {
        return Head::brokenOff;
    }
    constexpr std::size_t applicationIdAt = 68;
    if (numberAt(*head, applicationIdAt, 4) != static_cast<std::uint64_t>(geoPackageId)) {
        return Head::foreign;
    }
    return Head::geoPackage;
}

FileState stateByFailure(const base::Error& failure) {
    switch (failure.kind) {
    case base::ErrorKind::damagedWater:
        return FileState::damaged;
    case base::ErrorKind::waterInUse:
        return FileState::inUse;
    default:
        return FileState::unreadable;
    }
}

/// State of a file whose head is that of a GeoPackage.
FileState stateBySchema(Connection& connection) {
    const Reading reading(connection);
    const auto step = schema::stepOf(connection);
    const auto outcome = connection.outcome();
    if (!outcome && outcome.error().kind != base::ErrorKind::damagedWater) {
        return stateByFailure(outcome.error());
    }
    if (!outcome || isCut(connection)) {
        return FileState::damaged;
    }
    if (!step) {
        return FileState::notAWater;
    }
    return *step > schema::newestStep()   ? FileState::newer
           : *step < schema::newestStep() ? FileState::older
                                          : FileState::current;
}

base::Error unusable(const std::filesystem::path& path, std::string what, std::string whatToDo) {
    return {base::ErrorKind::unusableInput, std::move(what), path.string(), std::move(whatToDo)};
}

/// Why a file in this state cannot be opened.
base::Error refusal(FileState state, const std::filesystem::path& path) {
    switch (state) {
    case FileState::missing:
        return unusable(path, "there is no such water file", "check the name");
    case FileState::unreadable:
        return unusable(path, "the file cannot be read", "check that you may read it");
    case FileState::damaged:
        return {base::ErrorKind::damagedWater, "the water file is damaged", path.string(),
                "take a copy that is whole"};
    case FileState::inUse:
        return inUseBy(Owner(), path);
    case FileState::notAWater:
    case FileState::newer:
    case FileState::older:
    case FileState::current:
        break;
    }
    return unusable(path, "this is no water file",
                    "give a file that Meremark made, or bring its soundings in as survey days");
}

/// \param mayWrite false: whatever is asked of the connection, the file stays as it is.
void prepare(Connection& connection, bool mayWrite) {
    addSpatialFunctions(connection);
    connection.execute("PRAGMA cache_size = -65536");
    connection.execute(mayWrite ? "PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA"
                                : "PRAGMA query_only = TRUE");
}

/// Brings a file of an older version up to date, as its owner. \return true where it was older.
base::Result<bool> upgrade(Connection& connection, WriteRight& right) {
    const auto step = schema::stepOf(connection);
    if (auto outcome = connection.outcome(); !outcome) {
        return std::unexpected(outcome.error());
    }
    if (step.value_or(0) >= schema::newestStep()) {
        return false; // By another program, since we looked at its state.
    }
    if (auto claimed = right.claim(); !claimed && !connection.isReadOnly()) {
        return std::unexpected(claimed.error());
    }
    prepare(connection, true);
    if (auto upgraded = schema::bringUpToDate(connection, step.value_or(0)); !upgraded) {
        return std::unexpected(upgraded.error());
    }
    return true;
}

/// A store on a file at the newest step.
base::Result<std::unique_ptr<WaterStore>> storeOn(std::unique_ptr<Connection> connection,
                                                  Opening opening, WriteRight right) {
    if (connection->isReadOnly()) {
        right.giveUp();
    }
    prepare(*connection, right.isGranted());
    SaveMark known = SaveMark::in(*connection);
    if (auto prepared = connection->outcome(); !prepared) {
        return std::unexpected(prepared.error());
    }
    auto watch = Connection::open(connection->path(), Connection::Access::existing);
    if (!watch) {
        return std::unexpected(watch.error());
    }
    (*watch)->waitFor(std::chrono::milliseconds(0));
    return std::make_unique<SqliteStore>(std::move(connection), std::move(*watch), opening,
                                         std::move(right), std::move(known));
}

} // namespace

std::string_view nameOf(FileState state) {
    switch (state) {
    case FileState::missing:
        return "missing";
    case FileState::unreadable:
        return "unreadable";
    case FileState::notAWater:
        return "not a water";
    case FileState::damaged:
        return "damaged";
    case FileState::newer:
        return "newer";
    case FileState::older:
        return "older";
    case FileState::inUse:
        return "in use";
    case FileState::current:
        return "current";
    }
    return {};
}

std::optional<Owner> ownerOf(const std::filesystem::path& path) {
    const OwnerLock::Taken taken = OwnerLock::take(path);
    const auto* owner = std::get_if<Owner>(&taken);
    return owner != nullptr ? std::optional(*owner) : std::nullopt;
}

FileState stateOf(const std::filesystem::path& path) {
    std::error_code fault;
    if (!std::filesystem::exists(path, fault)) {
        return FileState::missing;
    }
    const auto connection = Connection::open(path, Connection::Access::existing);
    if (!connection) {
        return FileState::unreadable;
    }
    switch (headOf(**connection)) {
    case Head::unreadable:
        return FileState::unreadable;
    case Head::foreign:
        return FileState::notAWater;
    case Head::brokenOff:
        return FileState::damaged;
    case Head::geoPackage:
        break;
    }
    return stateBySchema(**connection);
}

base::Result<std::unique_ptr<WaterStore>> open(const std::filesystem::path& path, Purpose purpose,
                                               Copies* copies) {
    const FileState state = stateOf(path);
    if (state != FileState::current && state != FileState::older && state != FileState::newer) {
        return std::unexpected(refusal(state, path));
    }
    WriteRight right(path, purpose);
    if (state == FileState::newer) {
        right.leaveToNewer();
    }
    if (right.isGranted()) {
        base::sweepLeftovers(path.parent_path());
    }
    auto connection = Connection::open(path, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    Opening opening = state == FileState::newer ? Opening::newer : Opening::current;
    if (state == FileState::older) {
        if (copies != nullptr) {
            const auto now =
                std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
            if (const auto copy = copies->take(path, now); !copy) {
                return std::unexpected(copy.error());
            }
        }
        std::optional<WriteRight>
            meanwhile; // Whoever only looks owns it for as long as this takes.
        if (!right.isGranted()) {
            meanwhile.emplace(path, Purpose::writing);
        }
        const auto upgraded = upgrade(**connection, meanwhile ? *meanwhile : right);
        if (!upgraded) {
            return std::unexpected(upgraded.error());
        }
        opening = *upgraded ? Opening::upgraded : Opening::current;
    }
    return storeOn(std::move(*connection), opening, std::move(right));
}

base::Result<std::unique_ptr<WaterStore>> create(const std::filesystem::path& path) {
    WriteRight right(path, Purpose::writing);
    std::error_code fault;
    if (std::filesystem::exists(path, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "a file of this name is there already",
                          path.string(), "choose another name, or remove it first");
    }
    if (right.owner()) {
        return std::unexpected(inUseBy(*right.owner(), path)); // It is being made.
    }
    base::PendingFile pending(path);
    {
        auto empty = Connection::open(pending.beside(), Connection::Access::create);
        const auto laid = empty ? schema::bringUpToDate(**empty, 0)
                                : base::Result<void>(std::unexpected(empty.error()));
        if (!laid) {
            base::Error error = laid.error();
            error.where = path.string();
            return std::unexpected(std::move(error));
        }
    }
    removeJournalOf(path);
    if (auto placed = pending.putInPlace(); !placed) {
        return std::unexpected(placed.error());
    }
    auto connection = Connection::open(path, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    return storeOn(std::move(*connection), Opening::created, std::move(right));
}

std::string sqliteVersion() {
    return sqlite3_libversion();
}

} // namespace store
