// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <string>

namespace store {

/// Which save a water file stands at: how many there were, and a number drawn by lot, so that two
/// copies that went on apart differ though they were saved as often. Empty before the first save.
class SaveMark {
public:
    SaveMark() = default;
    /// What stands in the file.
    [[nodiscard]] static SaveMark in(Connection& connection);
    /// That of the save after this one; another one at each call.
    [[nodiscard]] SaveMark next() const;
    /// Inside the caller's transaction.
    void put(Connection& connection) const;

    bool operator==(const SaveMark&) const = default;

private:
    explicit SaveMark(std::string text) : text_(std::move(text)) {}

    std::string text_; ///< "12-5f3a09c1d2e4b687".
};

} // namespace store
