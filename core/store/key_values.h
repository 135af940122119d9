// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

/// A small table of facts: key, with the unit in its name, and value as text. Numbers read back to
/// the last bit. What is absent has no row.
class KeyValues {
public:
    void put(std::string key, std::string value);
    void put(std::string key, double value);
    void put(std::string key, std::int64_t value);
    void put(std::string key, const std::vector<double>& values);

    /// Nothing where there is no such key, or where its value is of another kind; the latter also
    /// damages the connection that the table was read from.
    [[nodiscard]] std::optional<std::string> text(std::string_view key) const;
    [[nodiscard]] std::optional<double> number(std::string_view key);
    [[nodiscard]] std::optional<std::int64_t> wholeNumber(std::string_view key);
    [[nodiscard]] std::optional<std::vector<double>> numbers(std::string_view key);
    /// The values of all keys that begin so, in the order of the keys.
    [[nodiscard]] std::vector<std::string> textsFrom(std::string_view prefix) const;

    /// In the place of all that the table held.
    void save(Connection& connection, std::string_view table) const;
    [[nodiscard]] static KeyValues load(Connection& connection, std::string_view table);

private:
    void damaged(std::string_view key);

    std::map<std::string, std::string, std::less<>> values_;
    std::map<std::string, double, std::less<>> numbers_; ///< Those put, for their ranges.
    Connection* connection_ = nullptr;                   ///< Where it was read from.
};

} // namespace store
