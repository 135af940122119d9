// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace {

base::Error written(std::string what, const std::filesystem::path& path, std::string whatToDo) {
    return {base::ErrorKind::unwritableOutput, std::move(what), path.string(), std::move(whatToDo)};
}

// A row of ours takes more than 16 bytes, and a look at it less than 16 steps of the database; a
// sort or an index is as much again for each halving. What needs more goes round in a circle.
constexpr int bundle = 100'000; ///< Steps between two looks at how many there were.
constexpr std::uint64_t fewestBundles = 200;
constexpr std::uint64_t stepsPerByte = 20;
constexpr std::uint64_t fewestRows = 1000;
constexpr std::uint64_t bytesPerRow = 16;
/// No text and no row of bytes of ours is longer: the names of trust of 40 million cells.
constexpr int longestValue = 64 << 20;

std::uint64_t rowsIn(std::uint64_t bytes) {
    return fewestRows + bytes / bytesPerRow;
}

/// Null where there is no open file.
sqlite3_file* fileOf(sqlite3* database) {
    sqlite3_file* file = nullptr;
    const int code = sqlite3_file_control(database, "main", SQLITE_FCNTL_FILE_POINTER,
                                          static_cast<void*>(&file));
    return code == SQLITE_OK && file != nullptr && file->pMethods != nullptr ? file : nullptr;
}

} // namespace

base::Error errorOf(int code, std::string_view message, const std::filesystem::path& path) {
    switch (code & 0xff) {
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_FORMAT:
        return {base::ErrorKind::damagedWater, "the water file is damaged", path.string(),
                "take a copy that is whole"};
    case SQLITE_ERROR: // What is asked is always well formed: it is the tables that are not ours.
        return {base::ErrorKind::damagedWater,
                fmt::format("the water file's tables are not as they should be ({})", message),
                path.string(), "take a copy that is whole"};
    case SQLITE_FULL:
        return written("the disk is full; nothing was changed", path, "make room and save again");
    case SQLITE_READONLY:
        if (code == SQLITE_READONLY_DBMOVED) {
            return written(
                "the water file was moved or deleted while it was open; nothing was saved", path,
                "open it where it is now, or save under another name");
        }
        [[fallthrough]];
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return written("the water file may only be read", path,
                       "allow writing to the file and its folder, or save under another name");
    case SQLITE_CONSTRAINT:
        return {base::ErrorKind::wrongUse,
                fmt::format("a value cannot be kept ({}); nothing was changed", message),
                path.string(), "correct the value and save again"};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {base::ErrorKind::waterInUse, "another program is using the water file",
                path.string(), "close it there and try again"};
    case SQLITE_CANTOPEN:
        return written("the water file cannot be opened", path,
                       "check that the folder is there and that you may write in it");
    case SQLITE_IOERR:
        if (code == SQLITE_IOERR_READ || code == SQLITE_IOERR_SHORT_READ) {
            return {base::ErrorKind::damagedWater, "the water file cannot be read to its end",
                    path.string(), "take a copy that is whole"};
        }
        return written("the disk does not take what is written; nothing was changed", path,
                       "check the disk and save again");
    default:
        return written(
            fmt::format("the water file refuses a change ({}); nothing was changed", message), path,
            "save under another name");
    }
}

base::Result<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& path,
                                                           Access access) {
    const int flags = SQLITE_OPEN_READWRITE | (access == Access::create ? SQLITE_OPEN_CREATE : 0);
    sqlite3* database = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &database, flags, nullptr);
    if (code != SQLITE_OK) {
        base::Error error = errorOf(code, sqlite3_errstr(code), path);
        if (access == Access::existing) {
            error.kind = base::ErrorKind::unusableInput;
            error.whatToDo = "check the name, and that you may read it";
        }
        sqlite3_close(database);
        return std::unexpected(std::move(error));
    }
    sqlite3_extended_result_codes(database, 1);
    auto opened = std::unique_ptr<Connection>(new Connection(path, database));
    opened->waitFor(usualPatience);
    if (auto guarded = opened->guard(); !guarded) {
        return std::unexpected(std::move(guarded.error()));
    }
    return opened;
}

base::Result<void> Connection::guard() {
    for (const auto& [option, value] :
         {std::pair(SQLITE_DBCONFIG_DEFENSIVE, 1), std::pair(SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0),
          std::pair(SQLITE_DBCONFIG_ENABLE_VIEW, 0), std::pair(SQLITE_DBCONFIG_ENABLE_TRIGGER, 0),
          std::pair(SQLITE_DBCONFIG_ENABLE_FKEY, 1)}) {
        int set = -1;
        if (const int code = sqlite3_db_config(database_, option, value, &set);
            code != SQLITE_OK || set != value) {
            failWith(code == SQLITE_OK ? SQLITE_MISUSE : code);
        }
    }
    sqlite3_limit(database_, SQLITE_LIMIT_LENGTH, longestValue);
    sqlite3_limit(database_, SQLITE_LIMIT_ATTACHED, 0);
    sqlite3_progress_handler(database_, bundle, countSteps, this);
    execute("PRAGMA cell_size_check = TRUE");
    return outcome();
}

void Connection::readInSpiteOfDamage() {
    sqlite3_db_config(database_, SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    sqlite3_db_config(database_, SQLITE_DBCONFIG_WRITABLE_SCHEMA, 1, nullptr);
    sqlite3_db_config(database_, SQLITE_DBCONFIG_ENABLE_FKEY, 0, nullptr);
}

/// \return false always: the row that was at fault is not to be taken.
bool Connection::tellAndForget() {
    if (teller_ && failure_->kind != base::ErrorKind::cancelled) {
        const base::Error told = std::move(*failure_);
        failure_.reset();
        teller_(told);
    }
    return false;
}

int Connection::countSteps(void* connection) {
    auto& self = *static_cast<Connection*>(connection);
    if (self.stepsLeft_ > 0) {
        --self.stepsLeft_;
        return 0;
    }
    self.failDamaged("a question to the water file finds no end");
    return 1;
}

void Connection::beginQuery() {
    seen_ = std::max(seen_, size().value_or(0));
    countFrom(seen_ + changed_);
}

void Connection::beginChange() {
    constexpr std::uint64_t longestRow = 256;
    changed_ += longestRow;
    countFrom(seen_ + changed_);
}

void Connection::countFrom(std::uint64_t bytes) {
    stepsLeft_ = fewestBundles + bytes * stepsPerByte / bundle;
    rowsLeft_ = rowsIn(bytes);
}

std::uint64_t Connection::mostRows() const {
    return rowsIn(size().value_or(0));
}

bool Connection::countRow() {
    if (rowsLeft_ == 0) {
        failDamaged("a table of the water file has more rows than the file has room for");
        return false;
    }
    --rowsLeft_;
    return true;
}

Connection::~Connection() {
    sqlite3_close_v2(database_);
}

bool Connection::isReadOnly() const {
    return sqlite3_db_readonly(database_, "main") == 1;
}

bool Connection::hasMoved() const {
    int moved = 0;
    const int code = sqlite3_file_control(database_, "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    return code == SQLITE_OK && moved != 0;
}

std::optional<std::string> Connection::firstBytes(std::size_t count) const {
    sqlite3_file* const file = fileOf(database_);
    const auto length = size();
    if (file == nullptr || !length) {
        return std::nullopt;
    }
    std::string bytes(std::min<std::uint64_t>(count, *length), '\0');
    const int code = bytes.empty() ? SQLITE_OK
                                   : file->pMethods->xRead(file, bytes.data(),
                                                           static_cast<int>(bytes.size()), 0);
    return code == SQLITE_OK ? std::optional(std::move(bytes)) : std::nullopt;
}

std::optional<std::uint64_t> Connection::size() const {
    sqlite3_file* const file = fileOf(database_);
    sqlite3_int64 bytes = 0;
    if (file == nullptr || file->pMethods->xFileSize(file, &bytes) != SQLITE_OK) {
        return std::nullopt;
    }
    return static_cast<std::uint64_t>(bytes);
}

void Connection::waitFor(std::chrono::milliseconds patience) {
    sqlite3_busy_timeout(database_, static_cast<int>(patience.count()));
}

void Connection::execute(const std::string& sql) {
    if (!isFine()) {
        return;
    }
    beginQuery();
    const int code = sqlite3_exec(database_, sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) {
        failWith(code);
    }
}

void Connection::rollBack() {
    if (sqlite3_get_autocommit(database_) == 0) {
        sqlite3_exec(database_, "ROLLBACK", nullptr, nullptr, nullptr);
    }
}

void Connection::fail(base::Error error) {
    if (!failure_) {
        failure_ = std::move(error);
    }
}

void Connection::failDamaged(std::string what) {
    fail({base::ErrorKind::damagedWater, std::move(what), path_.string(),
          "take a copy that is whole"});
}

void Connection::failWith(int code) {
    fail(errorOf(code, sqlite3_errmsg(database_), path_));
}

base::Result<void> Connection::outcome() {
    if (!failure_) {
        return {};
    }
    base::Error error = std::move(*failure_);
    failure_.reset();
    return std::unexpected(std::move(error));
}

} // namespace store
