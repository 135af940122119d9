// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

struct sqlite3;

namespace store {

/// An open database file that remembers its first failure. Statements on a failed connection do
/// nothing, so that a job may run to its end and ask once: outcome(). One thread at a time.
///
/// What others put into the file is data and never runs: no view and no trigger of theirs, no
/// function that could do harm from within a schema, no writing past the database's own rules. A
/// query ends after as many steps, and as many rows, as a whole file of this size can need.
class Connection {
public:
    enum class Access {
        existing, ///< Read-only where the file may only be read.
        create
    };

    /// \return the error of opening: unusableInput for an existing file, unwritableOutput for a new
    /// one.
    [[nodiscard]] static base::Result<std::unique_ptr<Connection>>
    open(const std::filesystem::path& path, Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    Connection(Connection&&) = delete;
    Connection& operator=(Connection&&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] bool isReadOnly() const;
    /// True where the file no longer stands under the name that it was opened by.
    [[nodiscard]] bool hasMoved() const;
    /// The first bytes of the file, at most `count`, and how long the file is. Read without a lock
    /// and through the database's own descriptor: to close another one of the same file would drop
    /// the locks that this process has on it.
    [[nodiscard]] std::optional<std::string> firstBytes(std::size_t count) const;
    [[nodiscard]] std::optional<std::uint64_t> size() const;
    [[nodiscard]] bool isFine() const { return !failure_; }

    /// How long to wait for another program that is just writing.
    void waitFor(std::chrono::milliseconds patience);
    static constexpr std::chrono::milliseconds usualPatience{3000};

    /// Remembers that rows of this layer have changed, for what other programs lay over it.
    void noteChanged(std::string_view layer) { changedLayers_.emplace(layer); }
    /// The layers that have changed since this was last asked.
    [[nodiscard]] std::set<std::string> takeChanged() { return std::exchange(changedLayers_, {}); }
    /// To be called where a query begins: its steps and rows are counted from here.
    void beginQuery();
    /// The same, without a look at the file, for a change of one row: there are millions of them.
    void beginChange();
    /// Counts a row. False, and the connection has failed, where a whole file of this size has no
    /// room for so many.
    [[nodiscard]] bool countRow();
    /// The most rows that a table has room for in a whole file of the size of this one.
    [[nodiscard]] std::uint64_t mostRows() const;

    /// Runs statements that give no rows.
    void execute(const std::string& sql);
    /// Rolls back even on a failed connection.
    void rollBack();

    /// Remembers a failure that the database itself does not see; the first one counts.
    void fail(base::Error error);
    /// The file contradicts itself: "survey day 3 has 12 soundings, not 14".
    void failDamaged(std::string what);
    /// Remembers what the database says about its last call.
    void failWith(int code);

    /// From here on a row or value that is damaged is told to `teller` and left out, and the
    /// reading goes on: for what can be rescued of a file that is not whole.
    void leaveOutDamaged(std::function<void(const base::Error&)> teller) {
        teller_ = std::move(teller);
    }
    [[nodiscard]] bool leavesOutDamaged() const { return teller_ != nullptr; }
    /// To be asked before a row that was read is taken for one of the water's: false where it must
    /// not be.
    [[nodiscard]] bool isRowWhole() { return !failure_ || tellAndForget(); }
    /// What stands even in pages and tables that are not as they should be can be read from here
    /// on. Only for a copy that nobody needs: what is written to it now may break it further.
    void readInSpiteOfDamage();

    /// Nothing, or the first failure, which is forgotten by asking.
    [[nodiscard]] base::Result<void> outcome();

    [[nodiscard]] sqlite3* handle() const { return database_; }

private:
    Connection(std::filesystem::path path, sqlite3* database)
        : path_(std::move(path)), database_(database) {}
    [[nodiscard]] base::Result<void> guard();
    bool tellAndForget();
    static int countSteps(void* connection);
    void countFrom(std::uint64_t bytes);

    std::filesystem::path path_;
    sqlite3* database_;
    std::optional<base::Error> failure_;
    std::function<void(const base::Error&)> teller_;
    std::uint64_t stepsLeft_ = 0; ///< In bundles.
    std::uint64_t rowsLeft_ = 0;
    std::set<std::string> changedLayers_;
    std::uint64_t seen_ = 0;    ///< Bytes of the file at the last look.
    std::uint64_t changed_ = 0; ///< At most so many since; they need not be in the file yet.
};

/// Puts a row that was read behind the others, unless it is damaged.
template <class List>
void takeRow(Connection& connection, List& list, typename List::value_type row) {
    if (connection.isRowWhole()) {
        list.push_back(std::move(row));
    }
}

/// What to tell the user about the answer `code` of the database.
[[nodiscard]] base::Error errorOf(int code, std::string_view message,
                                  const std::filesystem::path& path);

} // namespace store
