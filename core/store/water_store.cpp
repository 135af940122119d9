// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/water_store.h"

#include "core/base/whole_file.h"
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"
#include "core/store/spatial_functions.h"
#include "core/store/sqlite_store.h"
#include "core/store/statement.h"

#include <array>
#include <cstdint>
#include <fstream>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace {

constexpr std::size_t headSize = 100; ///< The head of every SQLite file.

/// What the first bytes of a file tell.
enum class Head { unreadable, foreign, brokenOff, geoPackage };

/// A number of `size` bytes in a head, the highest byte first.
std::uint64_t numberAt(const std::array<char, headSize>& head, std::size_t at, std::size_t size) {
    std::uint64_t number = 0;
    for (std::size_t i = 0; i < size; ++i) {
        number = number * 256 + static_cast<unsigned char>(head[at + i]);
    }
    return number;
}

/// True where a save was broken off and its journal waits to be rolled back.
bool hasJournal(const std::filesystem::path& path) {
    std::error_code fault;
    const auto size = std::filesystem::file_size(path.string() + "-journal", fault);
    return !fault && size > 0;
}

/// True where the file is shorter than its head says (SQLite file format, 1.3). SQLite itself
/// takes a last page that is cut for one that ends in zeros.
bool isCut(const std::filesystem::path& path, const std::array<char, headSize>& head) {
    constexpr std::size_t pageSizeAt = 16;
    constexpr std::size_t pageCountAt = 28;
    const std::uint64_t written = numberAt(head, pageSizeAt, 2);
    const std::uint64_t pageSize = written == 1 ? 65536 : written;
    std::error_code fault;
    const std::uint64_t size = std::filesystem::file_size(path, fault);
    return fault || size < numberAt(head, pageCountAt, 4) * pageSize;
}

Head headOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::array<char, headSize> head{};
    std::error_code fault;
    if (!file || std::filesystem::is_directory(path, fault)) {
        return Head::unreadable;
    }
    file.read(head.data(), head.size());
    const auto size = static_cast<std::size_t>(file.gcount());
    constexpr std::string_view magic("SQLite format 3\0", 16);
    if (size < magic.size() || std::string_view(head.data(), magic.size()) != magic) {
        return Head::foreign;
    }
    if (size < headSize) {
        return Head::brokenOff;
    }
    constexpr std::size_t applicationIdAt = 68;
    if (numberAt(head, applicationIdAt, 4) != static_cast<std::uint64_t>(geoPackageId)) {
        return Head::foreign;
    }
    return isCut(path, head) && !hasJournal(path) ? Head::brokenOff : Head::geoPackage;
}

/// State of a file whose head is that of a GeoPackage.
FileState stateBySchema(Connection& connection) {
    const auto step = schema::stepOf(connection);
    if (const auto outcome = connection.outcome(); !outcome) {
        return outcome.error().kind == base::ErrorKind::damagedWater ? FileState::damaged
                                                                     : FileState::unreadable;
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
    case FileState::newer:
        return unusable(path, "a newer version of Meremark keeps this water file",
                        "open it with that version; nothing was changed");
    case FileState::damaged:
        return {base::ErrorKind::damagedWater, "the water file is damaged", path.string(),
                "take a copy that is whole"};
    case FileState::notAWater:
    case FileState::older:
    case FileState::current:
        break;
    }
    return unusable(path, "this is no water file",
                    "give a file that Meremark made, or bring its soundings in as survey days");
}

void prepare(Connection& connection) {
    addSpatialFunctions(connection);
    connection.execute("PRAGMA cache_size = -65536; PRAGMA journal_mode = DELETE;"
                       "PRAGMA synchronous = EXTRA");
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
    case FileState::current:
        return "current";
    }
    return {};
}

FileState stateOf(const std::filesystem::path& path) {
    std::error_code fault;
    if (!std::filesystem::exists(path, fault)) {
        return FileState::missing;
    }
    switch (headOf(path)) {
    case Head::unreadable:
        return FileState::unreadable;
    case Head::foreign:
        return FileState::notAWater;
    case Head::brokenOff:
        return FileState::damaged;
    case Head::geoPackage:
        break;
    }
    const auto connection = Connection::open(path, Connection::Access::existing);
    return connection ? stateBySchema(**connection) : FileState::unreadable;
}

base::Result<std::unique_ptr<WaterStore>> open(const std::filesystem::path& path) {
    const FileState state = stateOf(path);
    if (state != FileState::current && state != FileState::older) {
        return std::unexpected(refusal(state, path));
    }
    auto connection = Connection::open(path, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    prepare(**connection);
    if (auto prepared = (*connection)->outcome(); !prepared) {
        return std::unexpected(prepared.error());
    }
    Opening opening = Opening::current;
    if (state == FileState::older) {
        opening = Opening::upgraded;
        const auto from = schema::stepOf(**connection).value_or(0);
        if (auto upgraded = schema::bringUpToDate(**connection, from); !upgraded) {
            return std::unexpected(upgraded.error());
        }
    }
    return std::make_unique<SqliteStore>(std::move(*connection), opening);
}

base::Result<std::unique_ptr<WaterStore>> create(const std::filesystem::path& path) {
    std::error_code fault;
    if (std::filesystem::exists(path, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "a file of this name is there already",
                          path.string(), "choose another name, or remove it first");
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
    if (auto placed = pending.putInPlace(); !placed) {
        return std::unexpected(placed.error());
    }
    auto connection = Connection::open(path, Connection::Access::existing);
    if (!connection) {
        return std::unexpected(connection.error());
    }
    prepare(**connection);
    if (auto prepared = (*connection)->outcome(); !prepared) {
        return std::unexpected(prepared.error());
    }
    return std::make_unique<SqliteStore>(std::move(*connection), Opening::created);
}

std::string sqliteVersion() {
    return sqlite3_libversion();
}

} // namespace store
