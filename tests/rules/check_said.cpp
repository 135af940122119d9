// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <regex>

namespace rules {

/// A literal with a blank in it is a sentence that somebody reads at the desk or on paper: names of
/// options and of table columns ("--unit ft", "bad_checksum") have no place there. What
/// meremark-batch says is another matter; what core says is read at the desk too, but core also
/// writes SQL and keys.
void checkSaid(const File& file, std::vector<Breach>& breaches) {
    const bool isDesk = file.part == "app" && file.folder != "batch" && !file.folder.empty();
    if (!isDesk && file.part != "core") {
        return;
    }
    static const std::regex option("(^|[^-])--[a-z]");
    static const std::regex key("[a-z]_[a-z]");
    for (const Piece& literal : file.text.literals) {
        const bool isSentence = literal.text.find(' ') != std::string::npos &&
                                literal.text.find(":/") == std::string::npos;
        if (isSentence && (std::regex_search(literal.text, option) ||
                           (isDesk && std::regex_search(literal.text, key)))) {
            breaches.push_back({"said", file.name, literal.line,
                                "an option or a raw key where a person reads: " + literal.text});
        }
    }
}

} // namespace rules
