// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace store {

/// All changes from here to commit() take effect together or not at all: what is not committed when
/// it goes out of scope is rolled back.
class Transaction {
public:
    explicit Transaction(Connection& connection) : connection_(connection) {
        connection_.execute("BEGIN IMMEDIATE");
    }
    ~Transaction() {
        if (!isDone_) {
            connection_.rollBack();
        }
    }
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    Transaction(Transaction&&) = delete;
    Transaction& operator=(Transaction&&) = delete;

    /// \return the first failure since the transaction began; then nothing was changed.
    [[nodiscard]] base::Result<void> commit() {
        connection_.execute("COMMIT");
        if (connection_.isFine()) {
            isDone_ = true;
        }
        return connection_.outcome();
    }

private:
    Connection& connection_;
    bool isDone_ = false;
};

/// A view of the file that stays the same while it is read, whatever others write.
class Reading {
public:
    explicit Reading(Connection& connection) : connection_(connection) {
        connection_.execute("BEGIN");
    }
    ~Reading() { connection_.rollBack(); }
    Reading(const Reading&) = delete;
    Reading& operator=(const Reading&) = delete;
    Reading(Reading&&) = delete;
    Reading& operator=(Reading&&) = delete;

private:
    Connection& connection_;
};

} // namespace store
