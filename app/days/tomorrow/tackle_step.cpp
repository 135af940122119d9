// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/set_plan.h"
#include "app/wording/mid_sentence.h"
#include "app/wording/tongue.h"
#include "app/wording/typed_amount.h"

#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>

namespace days::tomorrow {

namespace {

using units::Length;

/// One length of the tackle with the range that planning takes.
struct TackleLength {
    const char* label;
    const char* help;
    Length marks::Tackle::*member;
    double least_m;
    double most_m;
};

constexpr std::array tackleLengths{
    TackleLength{QT_TRANSLATE_NOOP("wording", "Cast"),
                 QT_TRANSLATE_NOOP("wording", "How far the farthest bait goes"),
                 &marks::Tackle::cast, 5.0, 100.0},
    TackleLength{QT_TRANSLATE_NOOP("wording", "Bow rope"),
                 QT_TRANSLATE_NOOP("wording", "What there is on board"), &marks::Tackle::bowRope,
                 5.0, 200.0},
    TackleLength{QT_TRANSLATE_NOOP("wording", "Stern rope"),
                 QT_TRANSLATE_NOOP("wording", "What there is on board"), &marks::Tackle::sternRope,
                 5.0, 200.0},
    TackleLength{QT_TRANSLATE_NOOP("wording", "Boat length"),
                 QT_TRANSLATE_NOOP("wording", "Bow to stern"), &marks::Tackle::boatLength, 2.0,
                 12.0},
    TackleLength{QT_TRANSLATE_NOOP("wording", "Bow height"),
                 QT_TRANSLATE_NOOP("wording", "Rope fairlead above the water"),
                 &marks::Tackle::bowHeight, 0.0, 2.0},
    TackleLength{QT_TRANSLATE_NOOP("wording", "Over-depth"),
                 QT_TRANSLATE_NOOP("wording", "Stop knot set deeper than the water by this"),
                 &marks::Tackle::overDepth, 0.0, 3.0}};

class TackleStep : public DayStep {
public:
    explicit TackleStep(DayContext context) : DayStep(context) {
        rods_ = new QSpinBox(this);
        rods_->setRange(1, 8);
        addField(tr("Rods"), rods_, tr("Rods in the water at once"));
        connect(rods_, &QSpinBox::valueChanged, this, [this](int rods) {
            set(tr("Set rods"), [&](marks::Tackle& tackle) { tackle.rods = rods; });
        });
        limit_ = addWords();
        anchors_ = new QComboBox(this);
        anchors_->addItems({tr("bow and stern"), tr("one at the bow")});
        addField(tr("Anchors"), anchors_,
                 tr("Between two anchors the boat lies still; to one she swings with the wind"));
        connect(anchors_, &QComboBox::activated, this, [this](int choice) {
            set(tr("Set anchors"),
                [choice](marks::Tackle& tackle) { tackle.toOneAnchor = choice == 1; });
        });
        for (const TackleLength& one : tackleLengths) {
            addLength(one);
        }
        scope_ = addAmount({tr("Scope"),
                            tr("Rope over depth plus bow height at the anchor; more in wind"),
                            [](const QString& text) { return scopeOf(text).has_value(); },
                            {},
                            tr("a number from 1.5 to 10")},
                           [this](const QString& text) {
                               set(tr("Set scope"),
                                   [&](marks::Tackle& tackle) { tackle.scope = *scopeOf(text); });
                           });
        speed_ = addBoatSpeed(tr("Between marks"));
    }

    DayStepLine refresh() override {
        const marks::Tackle& tackle = water().plan.tackle;
        const QSignalBlocker quiet(rods_);
        rods_->setValue(tackle.rods);
        for (std::size_t i = 0; i < tackleLengths.size(); ++i) {
            const Length length = tackle.*tackleLengths[i].member;
            lengths_[i]->showAmount(length.inMetres() < 3.0
                                        ? words().fineDepth(units::Depth::fromLength(length))
                                        : words().length(length));
        }
        scope_->showAmount(wording::Tongue::shortNumber(tackle.scope, 2));
        speed_->showAmount(words().speed(tackle.boatSpeed));
        anchors_->setCurrentIndex(tackle.toOneAnchor ? 1 : 0);
        setWords(limit_, rodLimitWords(tackle, water().houseRules));
        return {tackleLine(tackle, water().houseRules, words()), false};
    }

private:
    void set(const QString& name, const std::function<void(marks::Tackle&)>& change) {
        edits::setPlan(context_.open, name, [&](marks::Plan& plan) { change(plan.tackle); });
        refresh();
    }

    void addLength(const TackleLength& one) {
        const auto lengthOf = [this, one](const QString& text) -> std::optional<Length> {
            const auto length = wording::lengthTyped(text, words().units());
            const bool isInRange = length && length->inMetres() >= one.least_m - 1e-9 &&
                                   length->inMetres() <= one.most_m + 1e-9;
            return isInRange ? length : std::nullopt;
        };
        const wording::Words metric;
        lengths_.push_back(addAmount(
            {wording::Tongue::tr(one.label),
             wording::Tongue::tr(one.help),
             [lengthOf](const QString& text) { return lengthOf(text).has_value(); },
             {},
             tr("a length from %1 to %2, such as 12ft or 3.6 m")
                 .arg(metric.length(Length::metres(one.least_m)),
                      metric.length(Length::metres(one.most_m)))},
            [this, lengthOf, one](const QString& text) {
                set(tr("Set %1").arg(wording::midSentence(wording::Tongue::tr(one.label))),
                    [&](marks::Tackle& tackle) { tackle.*one.member = *lengthOf(text); });
            }));
    }

    static std::optional<double> scopeOf(const QString& text) {
        bool isNumber = false;
        const double scope = QString(text).replace(',', '.').toDouble(&isNumber);
        return isNumber && scope >= 1.5 && scope <= 10.0 ? std::optional(scope) : std::nullopt;
    }

    QSpinBox* rods_ = nullptr;
    QLabel* limit_ = nullptr;
    QComboBox* anchors_ = nullptr;
    std::vector<widgets::AmountField*> lengths_;
    widgets::AmountField* scope_ = nullptr;
    widgets::AmountField* speed_ = nullptr;
};

} // namespace

DayStep* makeTackleStep(DayContext context) {
    return new TackleStep(context);
}

} // namespace days::tomorrow
