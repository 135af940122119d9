// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/stay_fields.h"

#include "app/wording/tongue.h"
#include "app/wording/typed_amount.h"
#include "app/wording/typed_place.h"
#include "core/units/written_time.h"

#include <QObject>

namespace days::looking_back {

namespace {

using logbook::Fish;
using logbook::Stay;
using wording::Words;

/// \param least the least that there can be; absent where there is no such amount.
template <class Thing, class Value>
FieldOf<Thing> optionalField(const QString& label, const QString& hint,
                             std::optional<Value> Thing::*member,
                             QString (Words::*say)(Value) const,
                             std::optional<Value> (*parse)(const QString&, preferences::UnitSystem),
                             std::optional<Value> least = Value()) {
    return {label,
            hint,
            hint,
            wording::Tongue::tr("not known"),
            [=](const Thing& thing, const Words& words, const units::Clock&) {
                return thing.*member ? (words.*say)(*(thing.*member)) : QString();
            },
            [=](Thing& thing, const QString& text, const Words& words, const units::Clock&) {
                const auto typed = text.isEmpty() ? std::nullopt : parse(text, words.units());
                thing.*member = typed;
                return text.isEmpty() || (typed && (!least || *typed >= *least));
            }};
}

template <class Thing>
FieldOf<Thing> textField(const QString& label, const QString& help, std::string Thing::*member) {
    return {label,
            help,
            {},
            wording::Tongue::tr("none"),
            [=](const Thing& thing, const Words&, const units::Clock&) {
                return QString::fromStdString(thing.*member);
            },
            [=](Thing& thing, const QString& text, const Words&, const units::Clock&) {
                thing.*member = text.toStdString();
                return true;
            }};
}

QString shownMoment(units::Moment moment, const units::Clock& clock) {
    return QString::fromStdString(units::isoText(clock.dayOf(moment)) + ' ' +
                                  units::timeOfDayText(moment, clock));
}

template <class Thing>
FieldOf<Thing> momentField(const QString& label, units::Moment Thing::*member) {
    return {label,
            wording::Tongue::tr(
                "A time such as 9:20, 0920 or 5pm, or a date and a time such as 25/11/26 7:40"),
            wording::Tongue::tr("a time within the stay, such as 9:20 or 2026-10-03 09:20"),
            {},
            [=](const Thing& thing, const Words&, const units::Clock& clock) {
                return shownMoment(thing.*member, clock);
            },
            [=](Thing& thing, const QString& text, const Words&, const units::Clock& clock) {
                const auto moment = units::momentWritten(text.toStdString(), thing.*member, clock);
                thing.*member = moment.value_or(thing.*member);
                return moment.has_value();
            }};
}

/// Nothing where nobody noted it. \param near whose day a time alone is on.
FieldOf<Fish> runTimeField(const std::function<units::Moment()>& near) {
    return {
        wording::Tongue::tr("Time"),
        wording::Tongue::tr("A time such as 9:20, 0920 or 5pm, or nothing where it is not known"),
        wording::Tongue::tr("a time within the stay, such as 9:20 or 2026-10-03 09:20"),
        wording::Tongue::tr("not known"),
        [](const Fish& run, const Words&, const units::Clock& clock) {
            return run.time ? shownMoment(*run.time, clock) : QString();
        },
        [near](Fish& run, const QString& text, const Words&, const units::Clock& clock) {
            const auto moment =
                units::momentWritten(text.toStdString(), run.time.value_or(near()), clock);
            run.time = text.isEmpty() ? std::nullopt : moment ? moment : run.time;
            return text.isEmpty() || moment.has_value();
        }};
}

/// A stay put onto another day is as long as before, and its fish come along.
FieldOf<Stay> startField() {
    FieldOf<Stay> field = momentField(wording::Tongue::tr("From"), &Stay::start);
    field.write = [write = field.write](Stay& stay, const QString& text, const Words& words,
                                        const units::Clock& clock) {
        const units::Moment before = stay.start;
        if (!write(stay, text, words, clock)) {
            return false;
        }
        if (clock.dayOf(stay.start) != clock.dayOf(before)) {
            stay.end += stay.start - before;
            for (Fish& run : stay.runs) {
                run.time = run.time.transform(
                    [&](units::Moment time) { return time + (stay.start - before); });
            }
        }
        return true;
    };
    return field;
}

/// A field of the conditions as one of their stay.
FieldOf<Stay> ofConditions(const FieldOf<logbook::Conditions>& field) {
    return {
        field.label,
        field.help,
        field.hint,
        field.whenEmpty,
        [field](const Stay& stay, const Words& words, const units::Clock& clock) {
            return field.shown(stay.conditions, words, clock);
        },
        [field](Stay& stay, const QString& text, const Words& words, const units::Clock& clock) {
            return field.write(stay.conditions, text, words, clock);
        }};
}

FieldOf<logbook::Conditions> levelField() {
    return {
        wording::Tongue::tr("Level"),
        wording::Tongue::tr("As read on the gauge"),
        wording::Tongue::tr("a level on the gauge such as 0.35 m or 1ft 2in"),
        wording::Tongue::tr("not known"),
        [](const logbook::Conditions& on, const Words& words, const units::Clock&) {
            return on.level ? words.levelChange(*on.level - units::WaterLevel()) : QString();
        },
        [](logbook::Conditions& on, const QString& text, const Words& words, const units::Clock&) {
            const auto typed = wording::lengthTyped(text, words.units());
            on.level = typed ? std::optional(units::WaterLevel::metresOnGauge(typed->inMetres()))
                             : std::nullopt;
            return typed || text.isEmpty();
        }};
}

/// Where baits lay, told and typed as seen from the boat. \param boatOf where the boat lay.
template <class Thing>
FieldOf<Thing> baitPlaceField(const QString& label, const QString& help,
                              const std::function<geo::LonLat(const Thing&)>& boatOf) {
    return {
        label,
        help,
        wording::Tongue::tr("as seen from the boat, such as NE 30 m, or a position; within 300 m"),
        wording::Tongue::tr("not known"),
        [boatOf](const Thing& thing, const Words& words, const units::Clock&) {
            return thing.baitPlace ? wording::baitPlaceWords(*thing.baitPlace, boatOf(thing), words)
                                   : QString();
        },
        [boatOf](Thing& thing, const QString& text, const Words& words, const units::Clock&) {
            thing.baitPlace = text.isEmpty()
                                  ? std::nullopt
                                  : wording::baitPlaceTyped(text, boatOf(thing), words.units());
            return text.isEmpty() || thing.baitPlace;
        }};
}

/// Yes, no, or nobody noted it.
FieldOf<Fish> returnedField() {
    const QString yes = wording::Tongue::tr("yes");
    const QString no = wording::Tongue::tr("no");
    return {wording::Tongue::tr("Put back"),
            wording::Tongue::tr("Alive: yes or no"),
            wording::Tongue::tr("yes or no"),
            wording::Tongue::tr("not known"),
            [yes, no](const Fish& run, const Words&, const units::Clock&) {
                return run.returned ? (*run.returned ? yes : no) : QString();
            },
            [yes, no](Fish& run, const QString& text, const Words&, const units::Clock&) {
                const QString typed = text.toLower();
                const bool isYes = !typed.isEmpty() && yes.startsWith(typed);
                const bool isNo = !typed.isEmpty() && no.startsWith(typed);
                run.returned = isYes || isNo ? std::optional(isYes) : std::nullopt;
                return isYes || isNo || typed.isEmpty();
            }};
}

} // namespace

std::vector<FieldOf<Stay>> stayFields() {
    std::vector<FieldOf<Stay>> fields{startField(),
                                      momentField(wording::Tongue::tr("To"), &Stay::end)};
    fields.push_back({wording::Tongue::tr("Rods"), wording::Tongue::tr("Rods in the water"),
                      wording::Tongue::tr("a number from 1 to 8, or nothing where it is not known"),
                      wording::Tongue::tr("not known"),
                      [](const Stay& stay, const Words&, const units::Clock&) {
                          return stay.rods ? QString::number(*stay.rods) : QString();
                      },
                      [](Stay& stay, const QString& text, const Words&, const units::Clock&) {
                          stay.rods = text.isEmpty() ? std::nullopt : std::optional(text.toInt());
                          return !stay.rods || (*stay.rods >= 1 && *stay.rods <= 8);
                      }});
    fields.push_back(textField(wording::Tongue::tr("Bait"),
                               wording::Tongue::tr("What was on the hooks"), &Stay::bait));
    fields.push_back(baitPlaceField<Stay>(wording::Tongue::tr("Baits at"),
                                          wording::Tongue::tr("The middle of where they lay"),
                                          [](const Stay& stay) { return stay.place; }));
    fields.push_back({wording::Tongue::tr("Wind from"), wording::Tongue::tr("Degrees true"),
                      wording::Tongue::tr("degrees from 0 to 360, or a point such as SW"),
                      wording::Tongue::tr("not known"),
                      [](const Stay& stay, const Words&, const units::Clock&) {
                          return stay.conditions.windFrom
                                     ? Words::bearing(*stay.conditions.windFrom)
                                     : QString();
                      },
                      [](Stay& stay, const QString& text, const Words&, const units::Clock&) {
                          stay.conditions.windFrom = wording::bearingTyped(text);
                          return stay.conditions.windFrom || text.isEmpty();
                      }});
    const auto wind =
        optionalField(wording::Tongue::tr("Wind speed"),
                      wording::Tongue::tr("a speed such as 6 m/s, 13 mph, 12 kn or F4"),
                      &logbook::Conditions::windSpeed, &Words::speed, &wording::speedTyped);
    const auto warmth =
        optionalField(wording::Tongue::tr("Water"),
                      wording::Tongue::tr("a temperature such as 8 °C or 46 F, up to 40 °C"),
                      &logbook::Conditions::waterTemperature, &Words::temperature,
                      &wording::waterTemperatureTyped, std::optional<units::Temperature>());
    for (const auto& field : {wind, warmth}) {
        fields.push_back(ofConditions(field));
    }
    fields.push_back(ofConditions(levelField()));
    fields.push_back(ofConditions(textField(wording::Tongue::tr("Sky"),
                                            wording::Tongue::tr("Overcast, bright, rain"),
                                            &logbook::Conditions::sky)));
    fields.push_back(textField(wording::Tongue::tr("Who"),
                               wording::Tongue::tr("Who fished: Anna, or Anna, Ben"), &Stay::who));
    fields.push_back(textField(wording::Tongue::tr("Note"),
                               wording::Tongue::tr("In your own words"), &Stay::note));
    return fields;
}

std::vector<FieldOf<Fish>> runFields(const std::function<Stay()>& stayOf) {
    return {runTimeField([stayOf] { return stayOf().start; }),
            textField(wording::Tongue::tr("Species"), wording::Tongue::tr("Pike, perch, trout"),
                      &Fish::species),
            optionalField(
                wording::Tongue::tr("Weight"),
                wording::Tongue::tr("a weight such as 12 lb 8 oz, 12-8 or 5.2 kg, up to 100 kg"),
                &Fish::weight, &Words::weight, &wording::fishWeightTyped),
            optionalField(wording::Tongue::tr("Length"),
                          wording::Tongue::tr("a length such as 78 cm or 31 in, up to 3 m"),
                          &Fish::length, &Words::fishLength, &wording::fishLengthTyped),
            optionalField(wording::Tongue::tr("Bait depth"),
                          wording::Tongue::tr("a depth such as 12ft or 3.6 m"), &Fish::baitDepth,
                          &Words::depth, &wording::depthTyped),
            textField(wording::Tongue::tr("Bait"),
                      wording::Tongue::tr("Where it was not the stay's"), &Fish::bait),
            baitPlaceField<Fish>(wording::Tongue::tr("Bait at"),
                                 wording::Tongue::tr("Where it was taken"),
                                 [stayOf](const Fish&) { return stayOf().place; }),
            textField(wording::Tongue::tr("Hooked"),
                      wording::Tongue::tr("Where the hook held: scissors, throat"), &Fish::hooked),
            returnedField(),
            textField(wording::Tongue::tr("Who"),
                      wording::Tongue::tr("Who took it, where several fished"), &Fish::who),
            textField(wording::Tongue::tr("Photograph"),
                      wording::Tongue::tr("Its file, from the water's folder"), &Fish::photograph),
            textField(wording::Tongue::tr("Note"), wording::Tongue::tr("In your own words"),
                      &Fish::note)};
}

} // namespace days::looking_back
