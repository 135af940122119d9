// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/bands_view.h"
#include "app/days/survey_day/steps.h"
#include "app/days/survey_day/structure_part.h"
#include "app/days/survey_day/zones_part.h"
#include "app/edits/change_settings.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"

#include <QLabel>

namespace days::survey_day {

namespace {

constexpr int bandsShown = 8;
constexpr int zonesShown = 12;

class BandsStep : public SurveyStep {
public:
    explicit BandsStep(SurveyContext context) : SurveyStep(context) {
        edges_ =
            addAmount({tr("Band edges"),
                       tr("Depths that part the bands, shallow to deep"),
                       [this](const QString& text) {
                           return bandsOf(text, water().settings.bands.limit()).has_value();
                       },
                       {},
                       tr("depths such as 2, 4, 6, each deeper than the one before")},
                      [this](const QString& text) {
                          set(tr("Set band edges"), bandsOf(text, water().settings.bands.limit()));
                      });
        limit_ = addAmount({tr("Limit"),
                            tr("The deepest depth worth fishing; 30 ft to begin with"),
                            [this](const QString& text) { return withLimit(text).has_value(); },
                            {},
                            tr("a depth such as 30 ft")},
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
        edges_->showAmount(view.edges);
        limit_->showAmount(view.limit);
        bands_->setRows(view.bands);
        setWords(worthFishing_, view.worthFishing);
        structure_->refresh();
        zones_->refresh();
        return {view.state, input.isStale(water::Step::structure)};
    }

private:
    std::optional<contours::Bands> bandsOf(const QString& text, units::Depth limit) const {
        auto edges = wording::depthsTyped(text, context_.preferences.units());
        if (!edges) {
            return std::nullopt;
        }
        const auto bands = contours::Bands::make(std::move(*edges), limit);
        return bands ? std::optional(*bands) : std::nullopt;
    }

    std::optional<contours::Bands> withLimit(const QString& text) const {
        const auto limit = wording::depthTyped(text, context_.preferences.units());
        if (!limit) {
            return std::nullopt;
        }
        const auto bands = contours::Bands::make(water().settings.bands.edges(), *limit);
        return bands ? std::optional(*bands) : std::nullopt;
    }

    void set(const QString& name, const std::optional<contours::Bands>& bands) {
        if (bands) {
            tellIfWrong(edits::changeSettings(context_.open, name,
                                              [&](water::Settings& s) { s.bands = *bands; }));
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
