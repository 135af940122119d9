// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include <utility>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace {

constexpr int wait_ms = 3000; ///< For another program that is just writing.

base::Error written(std::string what, const std::filesystem::path& path, std::string whatToDo) {
    return {base::ErrorKind::unwritableOutput, std::move(what), path.string(), std::move(whatToDo)};
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
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return written("the water file may only be read", path,
                       "allow writing to the file and its folder, or save under another name");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return written("another program is using the water file", path,
                       "close it there and try again");
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
    sqlite3_busy_timeout(database, wait_ms);
    return std::unique_ptr<Connection>(new Connection(path, database));
}

Connection::~Connection() {
    sqlite3_close_v2(database_);
}

bool Connection::isReadOnly() const {
    return sqlite3_db_readonly(database_, "main") == 1;
}

void Connection::execute(const std::string& sql) {
    if (!isFine()) {
        return;
    }
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
