// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/written.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace units {

namespace {

constexpr std::string_view minusSign = "\u2212";

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// A number as it stands, and what it is where its comma parts thousands.
struct WrittenNumber {
    double value = 0.0;
    std::optional<double> asThousands;
};

/// Reads along a text.
class Reader {
public:
    explicit Reader(std::string_view text) : text_(text) { skipBlanks(); }
    [[nodiscard]] bool isAtEnd() const { return at_ == text_.size(); }

    /// -1 after a minus, 1 after a plus; nothing where neither stands here.
    std::optional<double> sign() {
        for (const auto& [mark, value] : {std::pair(std::string_view("+"), 1.0),
                                          {std::string_view("-"), -1.0},
                                          {minusSign, -1.0}}) {
            if (text_.substr(at_).starts_with(mark)) {
                at_ += mark.size();
                return value;
            }
        }
        return std::nullopt;
    }

    std::optional<WrittenNumber> number() {
        const std::string_view whole = digits();
        if (whole.empty()) {
            return std::nullopt;
        }
        std::string plain(whole);
        std::optional<double> asThousands;
        if (at_ + 1 < text_.size() && (text_[at_] == '.' || text_[at_] == ',') &&
            isDigit(text_[at_ + 1])) {
            const bool isComma = text_[at_] == ',';
            ++at_;
            const std::string_view behind = digits();
            if (isComma && behind.size() == 3 && whole.front() != '0') {
                asThousands = base::numberFrom(plain + std::string(behind));
            }
            plain += '.' + std::string(behind);
        }
        skipBlanks();
        const auto value = base::numberFrom(plain);
        return value ? std::optional(WrittenNumber{*value, asThousands}) : std::nullopt;
    }

    /// Up to a blank, a digit, a sign or a mark of punctuation; lower case; mostly empty where a
    /// number follows a number.
    std::string unit() {
        const std::size_t from = at_;
        while (at_ < text_.size() && !isDigit(text_[at_]) && text_[at_] != ' ' &&
               text_[at_] != '\t' && text_[at_] != '+' && text_[at_] != '-' && text_[at_] != '.' &&
               text_[at_] != ',' && !text_.substr(at_).starts_with(minusSign)) {
            ++at_;
        }
        std::string name = base::lowerCase(text_.substr(from, at_ - from));
        skipBlanks();
        return name;
    }

private:
    std::string_view digits() {
        const std::size_t from = at_;
        while (at_ < text_.size() && isDigit(text_[at_])) {
            ++at_;
        }
        return text_.substr(from, at_ - from);
    }
    void skipBlanks() {
        while (at_ < text_.size() && (text_[at_] == ' ' || text_[at_] == '\t')) {
            ++at_;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

/// What the number is, by the unit behind it; nothing where it could be either.
std::optional<double> readAs(const WrittenNumber& number, bool isSmall) {
    if (!number.asThousands) {
        return number.value;
    }
    return isSmall ? number.asThousands : std::nullopt;
}

constexpr double foot = 0.3048;
constexpr double inch = 0.0254;
constexpr double pound = kilogramsPerPound;
constexpr double ounce = kilogramsPerPound / 16.0;

std::optional<double> metresWritten(std::string_view text, double bareSi, bool isBareSmall) {
    return sumWritten(text,
                      {{"m", 1.0},
                       {"metre", 1.0},
                       {"metres", 1.0},
                       {"cm", 0.01, 0.0, true},
                       {"mm", 0.001, 0.0, true},
                       {"km", 1000.0},
                       {"ft", foot, inch},
                       {"feet", foot, inch},
                       {"foot", foot, inch},
                       {"'", foot, inch},
                       {"\u2032", foot, inch},
                       {"in", inch},
                       {"ins", inch},
                       {"inch", inch},
                       {"inches", inch},
                       {"\"", inch},
                       {"\u2033", inch},
                       {"''", inch},
                       {"mi", 1609.344},
                       {"fathom", 6.0 * foot},
                       {"fathoms", 6.0 * foot}},
                      bareSi, isBareSmall);
}

/// "21-4": pounds and ounces with a stroke between them.
std::optional<Weight> poundsAndOunces(std::string_view text) {
    const std::size_t stroke = text.find('-');
    if (stroke == std::string_view::npos || stroke == 0) {
        return std::nullopt;
    }
    const auto pounds = base::wholeNumberFrom(text.substr(0, stroke));
    const auto ounces = base::numberFrom(text.substr(stroke + 1));
    if (!pounds || !ounces || *pounds < 0 || *ounces < 0.0 || *ounces >= 16.0) {
        return std::nullopt;
    }
    return Weight::pounds(static_cast<double>(*pounds)) + Weight::ounces(*ounces);
}

} // namespace

std::optional<double> sumWritten(std::string_view text, std::initializer_list<UnitName> names,
                                 double bareSi, bool isBareSmall) {
    Reader reader(text);
    double sum = 0.0;
    const double sign = reader.sign().value_or(1.0);
    double nextSi = 0.0; // of a number without a unit, after the first
    double lastSi = 0.0;
    bool any = false;
    while (!reader.isAtEnd()) {
        const auto number = reader.number();
        if (!number) {
            return std::nullopt;
        }
        const std::string unit = reader.unit();
        const auto* found = std::ranges::find(names, unit, &UnitName::name);
        const bool isBare = unit.empty();
        if ((!isBare && found == names.end()) || (isBare && any && nextSi == 0.0)) {
            return std::nullopt;
        }
        const auto amount = readAs(*number, isBare ? isBareSmall && !any : found->isSmall);
        if (!amount) {
            return std::nullopt;
        }
        const double si = *amount * (isBare ? (any ? nextSi : bareSi) : found->si);
        if (isBare && any && si >= lastSi) {
            return std::nullopt; // "12 lb 20": twenty of what?
        }
        sum += si;
        lastSi = isBare ? 0.0 : found->si;
        nextSi = isBare ? 0.0 : found->nextSi;
        any = true;
    }
    return any ? std::optional(sign * sum) : std::nullopt;
}

std::optional<Length> lengthWritten(std::string_view text, Bare bare) {
    const auto metres = metresWritten(text, bare == Bare::metric ? 1.0 : foot, false);
    return metres ? std::optional(Length::metres(*metres)) : std::nullopt;
}

std::optional<Length> fishLengthWritten(std::string_view text, Bare bare) {
    const auto metres = metresWritten(text, bare == Bare::metric ? 0.01 : inch, true);
    return metres ? std::optional(Length::metres(*metres)) : std::nullopt;
}

std::optional<Area> areaWritten(std::string_view text, Bare bare) {
    const auto m2 = sumWritten(text,
                               {{"ha", 1e4},
                                {"hectares", 1e4},
                                {"ac", squareMetresPerAcre},
                                {"acres", squareMetresPerAcre},
                                {"acre", squareMetresPerAcre}},
                               bare == Bare::metric ? 1e4 : squareMetresPerAcre);
    return m2 ? std::optional(Area::squareMetres(*m2)) : std::nullopt;
}

std::optional<Weight> weightWritten(std::string_view text, Bare bare) {
    if (const auto both = poundsAndOunces(text)) {
        return both;
    }
    const auto kg = sumWritten(text,
                               {{"kg", 1.0},
                                {"kgs", 1.0},
                                {"kilo", 1.0},
                                {"kilos", 1.0},
                                {"g", 0.001, 0.0, true},
                                {"gr", 0.001, 0.0, true},
                                {"gram", 0.001, 0.0, true},
                                {"grams", 0.001, 0.0, true},
                                {"lb", pound, ounce},
                                {"lbs", pound, ounce},
                                {"pound", pound, ounce},
                                {"pounds", pound, ounce},
                                {"oz", ounce},
                                {"ozs", ounce},
                                {"ounce", ounce},
                                {"ounces", ounce}},
                               bare == Bare::metric ? 1.0 : pound);
    return kg ? std::optional(Weight::kilograms(*kg)) : std::nullopt;
}

std::optional<Speed> speedWritten(std::string_view text, Bare bare) {
    static const double mph = Speed::milesPerHour(1.0).inMetresPerSecond();
    static const double knot = Speed::knots(1.0).inMetresPerSecond();
    const auto speed = sumWritten(text,
                                  {{"m/s", 1.0},
                                   {"mph", mph},
                                   {"kn", knot},
                                   {"kt", knot},
                                   {"kts", knot},
                                   {"knot", knot},
                                   {"knots", knot},
                                   {"km/h", 1.0 / 3.6}},
                                  bare == Bare::metric ? 1.0 : mph);
    return speed ? std::optional(Speed::metresPerSecond(*speed)) : std::nullopt;
}

std::optional<Speed> soundSpeedWritten(std::string_view text, Bare bare) {
    const auto speed =
        sumWritten(text, {{"m/s", 1.0}, {"ft/s", foot}}, bare == Bare::metric ? 1.0 : foot, true);
    return speed ? std::optional(Speed::metresPerSecond(*speed)) : std::nullopt;
}

std::optional<Temperature> temperatureWritten(std::string_view text, Bare bare) {
    const auto degrees = sumWritten(
        text, {{"c", 1.0}, {"\u00b0c", 1.0}, {"f", 1.0}, {"\u00b0f", 1.0}, {"\u00b0", 1.0}}, 1.0);
    if (!degrees) {
        return std::nullopt;
    }
    const std::string lower = base::lowerCase(text);
    const bool isFahrenheit = lower.find('f') != std::string::npos ||
                              (bare == Bare::imperial && lower.find('c') == std::string::npos);
    return isFahrenheit ? Temperature::fahrenheit(*degrees) : Temperature::celsius(*degrees);
}

std::optional<Bearing> bearingWritten(std::string_view text) {
    static constexpr std::array points{"n", "nne", "ne", "ene", "e", "ese", "se", "sse",
                                       "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"};
    const std::string plain = base::lowerCase(base::trimmed(text));
    const auto* const named = std::ranges::find(points, plain);
    if (named != points.end()) {
        return Bearing::degrees(22.5 * static_cast<double>(named - points.begin()));
    }
    const auto degrees = sumWritten(text, {{"\u00b0", 1.0}, {"deg", 1.0}, {"degrees", 1.0}}, 1.0);
    const bool isRight = degrees && *degrees >= 0.0 && *degrees <= 360.0;
    return isRight ? std::optional(Bearing::degrees(*degrees)) : std::nullopt;
}

} // namespace units
