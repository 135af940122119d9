// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/anglers.h"

#include "core/base/number_text.h"

#include <algorithm>

namespace logbook {

namespace {

bool isNamedIn(const std::vector<std::string>& names, const std::string& one) {
    return std::ranges::any_of(names, [&one](const std::string& name) {
        return base::lowerCase(name) == base::lowerCase(one);
    });
}

} // namespace

std::vector<std::string> anglersIn(std::string_view who) {
    std::string text(who);
    constexpr std::string_view andWord = " and ";
    for (std::size_t at = base::lowerCase(text).find(andWord); at != std::string::npos;
         at = base::lowerCase(text).find(andWord)) {
        text.replace(at, andWord.size(), ",");
    }
    std::vector<std::string> names;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find_first_of(",;&+/", from), text.size());
        const std::string name(base::trimmed(std::string_view(text).substr(from, to - from)));
        if (!name.empty() && !isNamedIn(names, name)) {
            names.push_back(name);
        }
        from = to + 1;
    }
    return names;
}

bool areOtherAnglers(std::string_view a, std::string_view b) {
    const auto first = anglersIn(a);
    const auto second = anglersIn(b);
    return !first.empty() && !second.empty() &&
           std::ranges::none_of(
               second, [&first](const std::string& name) { return isNamedIn(first, name); });
}

std::string allAnglers(std::string_view a, std::string_view b) {
    std::string all;
    for (const std::string& name : anglersIn(std::string(a) + "," + std::string(b))) {
        all += (all.empty() ? "" : ", ") + name;
    }
    return all;
}

} // namespace logbook
