// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/key_values.h"

#include "core/base/number_text.h"
#include "core/store/geopackage.h"
#include "core/store/ranges.h"
#include "core/store/statement.h"

#include <utility>

#include <fmt/format.h>

namespace store {

void KeyValues::put(std::string key, std::string value) {
    values_[std::move(key)] = std::move(value);
}

void KeyValues::put(std::string key, double value) {
    numbers_[key] = value;
    put(std::move(key), base::exactText(value));
}

void KeyValues::put(std::string key, std::int64_t value) {
    numbers_[key] = static_cast<double>(value);
    put(std::move(key), std::to_string(value));
}

void KeyValues::put(std::string key, const std::vector<double>& values) {
    std::string joined;
    for (const double value : values) {
        joined += (joined.empty() ? "" : " ") + base::exactText(value);
    }
    put(std::move(key), std::move(joined));
}

std::optional<std::string> KeyValues::text(std::string_view key) const {
    const auto found = values_.find(key);
    return found == values_.end() ? std::nullopt : std::optional(found->second);
}

std::optional<double> KeyValues::number(std::string_view key) {
    const auto written = text(key);
    if (!written) {
        return std::nullopt;
    }
    const auto value = base::numberFrom(*written);
    if (!value) {
        damaged(key);
    }
    if (!value || connection_ == nullptr) {
        return value;
    }
    const double held = withinRange(*connection_, key, rangeOf(key), *value);
    return connection_->isRowWhole() ? std::optional(held) : std::nullopt;
}

std::optional<std::int64_t> KeyValues::wholeNumber(std::string_view key) {
    const auto written = text(key);
    if (!written) {
        return std::nullopt;
    }
    const auto value = base::wholeNumberFrom(*written);
    if (!value) {
        damaged(key);
        return std::nullopt;
    }
    const auto asRead = static_cast<double>(*value);
    const bool isWithin =
        connection_ == nullptr || (withinRange(*connection_, key, rangeOf(key), asRead) == asRead &&
                                   connection_->isRowWhole());
    return isWithin ? value : std::nullopt;
}

std::optional<std::vector<double>> KeyValues::numbers(std::string_view key) {
    const auto written = text(key);
    if (!written) {
        return std::nullopt;
    }
    std::vector<double> values;
    std::string_view left = *written;
    while (!left.empty()) {
        const std::string_view word = left.substr(0, left.find(' '));
        left.remove_prefix(std::min(left.size(), word.size() + 1));
        const auto value = base::numberFrom(word);
        if (!value) {
            damaged(key);
            return std::nullopt;
        }
        values.push_back(*value);
    }
    return values;
}

std::vector<std::string> KeyValues::textsFrom(std::string_view prefix) const {
    std::vector<std::string> texts;
    for (auto at = values_.lower_bound(prefix);
         at != values_.end() && at->first.starts_with(prefix); ++at) {
        texts.push_back(at->second);
    }
    return texts;
}

void KeyValues::damaged(std::string_view key) {
    if (connection_ != nullptr) {
        connection_->failDamaged(fmt::format("the value of {} is no number", key));
        static_cast<void>(connection_->isRowWhole());
    }
}

void KeyValues::save(Connection& connection, std::string_view table) const {
    connection.execute(fmt::format("DELETE FROM {}", table));
    Statement insert(connection, fmt::format("INSERT INTO {} (key, value) VALUES (?,?)", table));
    for (const auto& [key, value] : values_) {
        if (const auto number = numbers_.find(key); number != numbers_.end()) {
            static_cast<void>(kept(connection, key, number->second));
        }
        insert.run(key, value);
    }
    setChanged(connection, table);
}

KeyValues KeyValues::load(Connection& connection, std::string_view table) {
    KeyValues loaded;
    loaded.connection_ = &connection;
    Statement rows(connection, fmt::format("SELECT key, value FROM {}", table));
    rows.ask();
    while (rows.next()) {
        std::string key = rows.text(0);
        std::string value = rows.text(1);
        if (connection.isRowWhole()) {
            loaded.put(std::move(key), std::move(value));
        }
    }
    return loaded;
}

} // namespace store
