// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/said.h"

#include <algorithm>
#include <regex>

namespace rules {

namespace {

std::string unescaped(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\\' || i + 1 == text.size()) {
            plain += text[i];
            continue;
        }
        ++i;
        plain += text[i] == 'n' ? '\n' : text[i] == 't' ? '\t' : text[i] == 'r' ? '\r' : text[i];
    }
    return plain;
}

Said::Way wayOf(const std::string& lead) {
    static const std::regex translated(
        R"((^|[^A-Za-z_])(tr\(|QT_TRANSLATE_NOOP\("",|translate\("",)$)");
    static const std::regex counted(R"((^|[^A-Za-z_])counted\($)");
    static const std::regex second(R"((^|[^A-Za-z_])(counted|tr)\((""){1,20},$)");
    return std::regex_search(lead, translated) ? Said::Way::translated
           : std::regex_search(lead, counted)  ? Said::Way::counted
           : std::regex_search(lead, second)   ? Said::Way::one
                                               : Said::Way::plain;
}

std::string unmarked(std::string text) {
    for (const auto& [mark, plain] : {std::pair<std::string, std::string>{"&lt;", "<"},
                                      {"&gt;", ">"},
                                      {"&quot;", "\""},
                                      {"&apos;", "'"},
                                      {"&amp;", "&"}}) {
        for (std::size_t at = text.find(mark); at != std::string::npos;
             at = text.find(mark, at + plain.size())) {
            text.replace(at, mark.size(), plain);
        }
    }
    return text;
}

/// What stands between the first <name ...> and its end from `from` on; empty where there is none.
std::string elementOf(std::string_view text, const std::string& name) {
    const std::size_t open = text.find("<" + name);
    const std::size_t start = open == std::string_view::npos ? open : text.find('>', open);
    const std::size_t end = text.find("</" + name + ">");
    return start == std::string_view::npos || end == std::string_view::npos
               ? std::string()
               : unmarked(std::string(text.substr(start + 1, end - start - 1)));
}

Message messageOf(std::string_view text) {
    Message message;
    message.isCounted = text.find("numerus=\"yes\"") != std::string_view::npos;
    message.source = elementOf(text, "source");
    message.comment = elementOf(text, "comment");
    message.isFinished = text.find("<translation>") != std::string_view::npos;
    if (!message.isCounted) {
        message.forms.push_back(elementOf(text, "translation"));
        return message;
    }
    constexpr std::string_view form = "<numerusform>";
    for (std::size_t from = text.find(form); from != std::string_view::npos;
         from = text.find(form, from + 1)) {
        message.forms.push_back(elementOf(text.substr(from), "numerusform"));
    }
    return message;
}

} // namespace

std::vector<Said> saidIn(const SourceText& source) {
    std::vector<Said> texts;
    for (const Piece& literal : source.literals) {
        if (literal.before.ends_with("#include")) {
            continue;
        }
        const bool goesOn = literal.before.ends_with("\"\"") && !texts.empty();
        if (goesOn) {
            texts.back().text += unescaped(literal.text);
            continue;
        }
        if (!texts.empty() && wayOf(literal.before) == Said::Way::one) {
            texts.push_back({literal.line, unescaped(literal.text), Said::Way::one, {}, {}});
            continue;
        }
        texts.push_back(
            {literal.line, unescaped(literal.text), wayOf(literal.before), {}, literal.before});
    }
    for (std::size_t i = 0; i + 1 < texts.size(); ++i) {
        if (texts[i + 1].way == Said::Way::one) {
            texts[i].one = texts[i + 1].text;
        }
    }
    return texts;
}

bool isProse(std::string_view text) {
    static const std::regex words("[A-Za-z]{2}[,;:.!?)]* +[A-Za-z({%]|[A-Za-z(%}0-9.] +[a-z]{2}|"
                                  "^ +[a-z]{2}|[a-z]{2} +$");
    static const std::regex foreign(
        R"(<[a-z/?]|://|^:/|=|\b[A-Z]{2,} [A-Z]{2,}|\b(SELECT|INSERT|CREATE|UPDATE|DELETE|DROP|ALTER|PRAGMA|FROM|WHERE|VALUES|SET|TABLE|ORDER BY|REFERENCES|PRIMARY|AND|OR|NULL|INTEGER|REAL|TEXT|JOIN|LIMIT|BLOB|ON)\b|gpkg_)");
    static const std::regex date("[dMyHhm]{1,4}([ .,:/-]+[dMyHhm]{1,4})+");
    const std::string held(text);
    return std::regex_search(held, words) && !std::regex_search(held, foreign) &&
           !std::regex_match(held, date);
}

bool isShownWord(const Said& said) {
    static const std::regex word("[A-Z]?[a-z]{2,}(-[a-z]+)?");
    static const std::regex shown(R"((QStringLiteral|QString::fromUtf8|QString::fromLatin1)\($)");
    static const std::regex kept(
        R"((setObjectName|setProperty|property|stateOf|keepState|setLook|QFont|findChild\w*)\()");
    return std::regex_match(said.text, word) && std::regex_search(said.lead, shown) &&
           !std::regex_search(said.lead, kept);
}

std::vector<Message> messagesOf(std::string_view catalogue) {
    std::vector<Message> messages;
    for (std::size_t at = catalogue.find("<message"); at != std::string_view::npos;
         at = catalogue.find("<message", at + 1)) {
        const std::size_t end = catalogue.find("</message>", at);
        messages.push_back(messageOf(catalogue.substr(at, end - at)));
    }
    return messages;
}

std::vector<std::string> gapsOf(std::string_view text) {
    static const std::regex gap(R"(%L?\d+|%n|\{\d*(:[^}]*)?\})");
    std::vector<std::string> gaps;
    const std::string held(text);
    for (std::sregex_iterator it(held.begin(), held.end(), gap), end; it != end; ++it) {
        gaps.push_back((*it)[0].str().front() == '{' ? "{}" : (*it)[0].str());
    }
    std::ranges::sort(gaps);
    return gaps;
}

} // namespace rules
