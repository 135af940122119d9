// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/bands_view.h"
#include "app/days/survey_day/steps.h"
#include "app/days/survey_day/structure_part.h"
#include "app/days/survey_day/zones_part.h"
#include "app/edits/change_settings.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"
#include "core/water/document/chosen_scale.h"

#include <QLabel>

namespace days::survey_day {

namespace {

constexpr int bandsShown = 8;
constexpr int zonesShown = 12;

class BandsStep : public SurveyStep {
public:
    explicit BandsStep(SurveyContext context) : SurveyStep(context) {
        edges_ = addAmount(
            {tr("Band edges"),
             tr("Depths that part the bands, shallow to deep; empty: round steps, chosen from the "
                "depths of this water"),
             [this](const QString& text) { return withEdges(text).has_value(); },
             tr("chosen from the depths"),
             tr("depths such as 2, 4, 6, each deeper than the one before, or nothing")},
            [this](const QString& text) { set(tr("Set band edges"), withEdges(text)); });
        limit_ = addAmount(
            {tr("Limit"),
             tr("The deepest depth worth fishing; empty: 9 m or 30 ft, or all of a water that is "
                "not so deep"),
             [this](const QString& text) { return withLimit(text).has_value(); },
             tr("chosen from the depths"), tr("a depth such as 30 ft, or nothing")},
            [this](const QString& text) { set(tr("Set limit"), withLimit(text)); });
        bands_ = new widgets::PlainTable({tr("Band"), tr("Area"), tr("Share"), tr("Volume")},
                                         bandsShown, this);
        addWide(bands_);
        worthFishing_ = addWords();
        addHeading(tr("Structure"));
        zones_ = new ZonesPart(context, chart::ZonesPicked::structure, zonesShown);
        addWide(zones_);
        structure_ = new StructurePart(context);
        addWide(structure_);
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const BandsView view = bandsViewOf(input);
        show(edges_, view.edges, view.areEdgesChosen);
        show(limit_, view.limit, view.isLimitChosen);
        bands_->setRows(view.bands);
        setWords(worthFishing_, view.worthFishing);
        structure_->refresh();
        zones_->refresh();
        return {view.state, input.isStale(water::Step::structure)};
    }

private:
    /// What was chosen stands there faintly, what the user set as text.
    static void show(widgets::AmountField* field, const QString& amount, bool isChosen) {
        field->setPlaceholderText(tr("%1 (chosen)").arg(amount));
        field->showAmount(isChosen ? QString() : amount);
    }

    [[nodiscard]] contours::Bands now() const {
        return water::bandsOf(water(), context_.open.derived());
    }

    std::optional<water::Settings> withEdges(const QString& text) const {
        water::Settings settings = water().settings;
        if (text.isEmpty()) {
            settings.bands.reset();
            return settings;
        }
        auto edges = wording::depthsTyped(text, context_.preferences.units());
        const auto bands = edges ? contours::Bands::make(std::move(*edges), now().limit())
                                 : base::Result<contours::Bands>(contours::Bands());
        if (!edges || !bands) {
            return std::nullopt;
        }
        settings.bands = *bands;
        return settings;
    }

    std::optional<water::Settings> withLimit(const QString& text) const {
        water::Settings settings = water().settings;
        const auto limit = wording::depthTyped(text, context_.preferences.units());
        if (!limit && !text.isEmpty()) {
            return std::nullopt;
        }
        settings.limit = text.isEmpty() ? std::nullopt : std::optional(*limit);
        if (settings.bands) {
            const auto bands = contours::Bands::make(
                settings.bands->edges(), limit.value_or(contours::usualLimit(settings.countsIn)));
            if (!bands) {
                return std::nullopt;
            }
            settings.bands = *bands; // The limit stays for the day when the edges are cleared.
        }
        return water::problemsIn(settings).empty() ? std::optional(settings) : std::nullopt;
    }

    void set(const QString& name, const std::optional<water::Settings>& wanted) {
        if (wanted) {
            tellIfWrong(edits::changeSettings(context_.open, name,
                                              [&](water::Settings& s) { s = *wanted; }));
        }
    }

    widgets::AmountField* edges_ = nullptr;
    widgets::AmountField* limit_ = nullptr;
    widgets::PlainTable* bands_ = nullptr;
    QLabel* worthFishing_ = nullptr;
    StructurePart* structure_ = nullptr;
    ZonesPart* zones_ = nullptr;
};

} // namespace

SurveyStep* makeBandsStep(SurveyContext context) {
    return new BandsStep(context);
}

} // namespace days::survey_day
