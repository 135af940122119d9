// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/source_text.h"

#include <cctype>
#include <fstream>
#include <iterator>
#include <regex>

namespace rules {

namespace {

bool isWordCharacter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// Walks over a source once and sorts its characters into code, comment and literal.
class Scanner {
public:
    explicit Scanner(std::string_view source) : source_(source) {}

    void scan() {
        while (at_ < source_.size()) {
            step();
        }
    }

    std::string code;            ///< Without comments and without what literals hold.
    std::string withoutComments; ///< Literals kept: includes are read from here.
    std::vector<Piece> literals;

private:
    void step() {
        if (startsWith("//")) {
            skipTo("\n", 0);
        } else if (startsWith("/*")) {
            skipTo("*/", 2);
        } else if (startsWith("R\"") && !followsWord()) {
            readRawLiteral();
        } else if (source_[at_] == '"' || (source_[at_] == '\'' && !followsWord())) {
            readLiteral(source_[at_]);
        } else {
            code += source_[at_];
            withoutComments += source_[at_];
            advance();
        }
    }

    [[nodiscard]] bool startsWith(std::string_view text) const {
        return source_.substr(at_).starts_with(text);
    }

    /// True within a word or a number: the mark in 1'000, the R of fooR"...".
    [[nodiscard]] bool followsWord() const { return at_ > 0 && isWordCharacter(source_[at_ - 1]); }

    void advance() {
        line_ += source_[at_] == '\n' ? 1 : 0;
        ++at_;
    }

    /// Passes over a comment: up to `end` and `extra` characters more. Its line ends stay, so that
    /// lines keep their numbers.
    void skipTo(std::string_view end, std::size_t extra) {
        const std::size_t found = source_.find(end, at_ + extra);
        const std::size_t stop = found == std::string_view::npos ? source_.size() : found + extra;
        while (at_ < stop) {
            keepLineEnd();
            advance();
        }
    }

    void keepLineEnd() {
        if (source_[at_] == '\n') {
            code += '\n';
            withoutComments += '\n';
        }
    }

    void readLiteral(char quote) {
        Piece literal{line_, {}, lead()};
        code += quote;
        withoutComments += quote;
        advance();
        while (at_ < source_.size() && source_[at_] != quote && source_[at_] != '\n') {
            if (source_[at_] == '\\' && at_ + 1 < source_.size()) {
                take(literal);
            }
            take(literal);
        }
        if (at_ < source_.size() && source_[at_] == quote) {
            code += quote;
            withoutComments += quote;
            advance();
        }
        if (quote == '"') {
            literals.push_back(std::move(literal));
        }
    }

    [[nodiscard]] std::string lead() const {
        constexpr std::size_t most = 60;
        std::string tail;
        bool hasBlank = false;
        for (auto at = code.rbegin(); at != code.rend() && tail.size() < most; ++at) {
            if (std::isspace(static_cast<unsigned char>(*at)) != 0) {
                hasBlank = true;
                continue;
            }
            if (hasBlank && !tail.empty() && isWordCharacter(*at) && isWordCharacter(tail.back())) {
                tail += ' ';
            }
            hasBlank = false;
            tail += *at;
        }
        return {tail.rbegin(), tail.rend()};
    }

    void take(Piece& literal) {
        literal.text += source_[at_];
        withoutComments += source_[at_];
        advance();
    }

    void readRawLiteral() {
        const std::size_t open = source_.find('(', at_);
        if (open == std::string_view::npos) {
            at_ = source_.size();
            return;
        }
        const std::string close = ")" + std::string(source_.substr(at_ + 2, open - at_ - 2)) + "\"";
        const std::size_t end = source_.find(close, open);
        const std::size_t stop = end == std::string_view::npos ? source_.size() : end;
        literals.push_back({line_, std::string(source_.substr(open + 1, stop - open - 1)), lead()});
        code += "\"\"";
        const std::size_t past = std::min(source_.size(), stop + close.size());
        while (at_ < past) {
            keepLineEnd();
            advance();
        }
    }

    std::string_view source_;
    std::size_t at_ = 0;
    int line_ = 1;
};

} // namespace

std::vector<std::string> linesOf(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines.emplace_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

SourceText takeApart(std::string_view source) {
    Scanner scanner(source);
    scanner.scan();
    SourceText text;
    text.lines = linesOf(source);
    text.code = linesOf(scanner.code);
    text.literals = std::move(scanner.literals);
    static const std::regex include(R"re(^\s*#\s*include\s*(["<])([^">]+)[">].*)re");
    int number = 0;
    for (const std::string& line : linesOf(scanner.withoutComments)) {
        ++number;
        std::smatch match;
        if (std::regex_match(line, match, include)) {
            auto& list = match[1] == "\"" ? text.quotedIncludes : text.angledIncludes;
            list.push_back({number, match[2]});
        }
    }
    return text;
}

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

} // namespace rules
