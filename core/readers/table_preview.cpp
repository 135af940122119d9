// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/table_preview.h"

#include <algorithm>

namespace readers {

std::optional<std::size_t> TablePreview::columnOf(ColumnRole role) const {
    const auto at = std::ranges::find(roles, role);
    return at == roles.end() ? std::nullopt
                             : std::optional(static_cast<std::size_t>(at - roles.begin()));
}

std::string TablePreview::columnList() const {
    std::string list;
    for (const std::string& column : columns) {
        constexpr std::size_t longest = 300;
        if (list.size() + column.size() > longest) {
            return list + "...";
        }
        list += (list.empty() ? "" : ", ") + column;
    }
    return list;
}

} // namespace readers
