// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/other_fields.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace store {

using nlohmann::json;

std::string keptFields(const std::vector<logbook::OtherField>& fields) {
    if (fields.empty()) {
        return {};
    }
    json list = json::array();
    for (const logbook::OtherField& field : fields) {
        list.push_back(json::array({field.column, field.text}));
    }
    return list.dump(-1, ' ', false, json::error_handler_t::replace);
}

std::vector<logbook::OtherField> fieldsAt(Connection& connection, Statement& rows, int column) {
    std::vector<logbook::OtherField> fields;
    const std::string text = rows.text(column);
    if (text.empty()) {
        return fields;
    }
    const json list = json::parse(text, nullptr, false);
    const auto isField = [](const json& one) {
        return one.is_array() && one.size() == 2 && one[0].is_string() && one[1].is_string();
    };
    if (!list.is_array() || !std::ranges::all_of(list, isField)) {
        connection.failDamaged("the log holds other fields that cannot be read");
        return fields;
    }
    for (const json& one : list) {
        fields.push_back({one[0].get<std::string>(), one[1].get<std::string>()});
    }
    return fields;
}

} // namespace store
