// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/layers.h"

#include "tests/rules/source_text.h"

#include <regex>
#include <sstream>

namespace rules {

Layers layersIn(std::string_view cmakeLists, std::string_view command) {
    std::string plain;
    for (const std::string& line : linesOf(cmakeLists)) {
        plain += line.substr(0, line.find('#')) + '\n';
    }
    Layers layers;
    const std::regex call(std::string(command) + R"(\s*\(([^)]*)\))");
    for (std::sregex_iterator at(plain.begin(), plain.end(), call), end; at != end; ++at) {
        std::istringstream words((*at)[1].str());
        std::string name;
        words >> name;
        auto& uses = layers[name];
        bool isUse = false;
        for (std::string word; words >> word;) {
            if (word == "USES" || word == "FENCED") {
                isUse = word == "USES";
            } else if (isUse) {
                uses.insert(word);
            }
        }
    }
    return layers;
}

} // namespace rules
