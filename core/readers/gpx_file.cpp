// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/gpx_file.h"

#include "core/base/harmless_text.h"
#include "core/base/number_text.h"
#include "core/base/readable_file.h"

#include <fstream>
#include <memory>
#include <string_view>

#include <expat.h>
#include <fmt/format.h>

namespace readers {

namespace {

constexpr std::size_t deepest = 100;
constexpr std::size_t longestText = 4096;
constexpr std::size_t mostExtensions = 256; ///< Of one point; loggers write a dozen.

/// The name without the name space that expat puts before it.
std::string_view localName(const XML_Char* name) {
    const std::string_view whole(name);
    const std::size_t colon = whole.find_last_of(":|");
    return colon == std::string_view::npos ? whole : whole.substr(colon + 1);
}

struct ForgetParser {
    void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};
using Parser = std::unique_ptr<std::remove_pointer_t<XML_Parser>, ForgetParser>;

/// Turns expat's calls into points.
class Walk {
public:
    Walk(XML_Parser parser, const std::function<void(const GpxPoint&)>& take)
        : parser_(parser), take_(&take) {}

    void begin(std::string_view name, const XML_Char** attributes) {
        ++depth_;
        if (depth_ == 1) {
            isGpx_ = name == "gpx";
        }
        if (depth_ > deepest) {
            stop(fmt::format("more than {} elements inside one another", deepest));
            return;
        }
        text_.clear();
        isLeaf_ = true;
        if (name == "trkseg" || name == "rte") {
            segmentBegins_ = true;
        }
        if (name == "extensions" && pointDepth_ > 0) {
            extensionsDepth_ = extensionsDepth_ == 0 ? depth_ : extensionsDepth_;
        }
        const bool isPoint = name == "wpt" || name == "rtept" || name == "trkpt";
        if (isPoint && pointDepth_ == 0) {
            beginPoint(name, attributes);
        }
    }

    void text(std::string_view more) {
        if (pointDepth_ > 0 && text_.size() < longestText) {
            text_ += more.substr(0, longestText - text_.size());
        }
    }

    void end(std::string_view name) {
        if (pointDepth_ > 0) {
            endInPoint(name);
        }
        isLeaf_ = false;
        --depth_;
    }

    void countEntity(const XML_Char* name) {
        if (++end_.entities == 1) {
            end_.firstEntity = name;
            end_.firstEntityLine = static_cast<std::size_t>(XML_GetCurrentLineNumber(parser_));
        }
    }

    [[nodiscard]] bool isGpx() const { return isGpx_; }
    [[nodiscard]] const GpxEnd& end() const { return end_; }

private:
    void stop(std::string fault) {
        if (end_.fault.empty()) {
            end_.fault = std::move(fault);
        }
        XML_StopParser(parser_, XML_FALSE);
    }

    void beginPoint(std::string_view name, const XML_Char** attributes) {
        pointDepth_ = depth_;
        point_ = GpxPoint{};
        point_.kind = name == "wpt"     ? GpxKind::waypoint
                      : name == "rtept" ? GpxKind::routePoint
                                        : GpxKind::trackPoint;
        point_.line = static_cast<std::size_t>(XML_GetCurrentLineNumber(parser_));
        std::optional<double> lat_deg;
        std::optional<double> lon_deg;
        for (std::size_t i = 0; attributes[i] != nullptr; i += 2) {
            const std::string_view key = localName(attributes[i]);
            if (key == "lat") {
                lat_deg = base::numberFrom(attributes[i + 1]);
            } else if (key == "lon") {
                lon_deg = base::numberFrom(attributes[i + 1]);
            }
        }
        if (lat_deg && lon_deg) {
            point_.place = geo::LonLat{*lon_deg, *lat_deg};
        }
        point_.beginsSegment = point_.kind != GpxKind::waypoint && segmentBegins_;
        segmentBegins_ = segmentBegins_ && point_.kind == GpxKind::waypoint;
    }

    void endInPoint(std::string_view name) {
        if (extensionsDepth_ > 0 && depth_ > extensionsDepth_) {
            if (isLeaf_ && point_.extensions.size() < mostExtensions) {
                point_.extensions.emplace_back(name, base::trimmed(text_));
            }
        } else if (extensionsDepth_ == depth_) {
            extensionsDepth_ = 0;
        } else if (depth_ == pointDepth_ + 1) {
            const std::string_view text = base::trimmed(text_);
            if (name == "ele") {
                point_.elevation = text;
            } else if (name == "time") {
                point_.time = text;
            } else if (name == "name") {
                point_.name = base::harmless(text);
            } else if (name == "desc") {
                point_.description = text;
            } else if (name == "fix") {
                point_.hasFix = text != "none";
            } else if (name == "depth") { // Some write it beside the elevation.
                point_.extensions.emplace_back(name, text);
            }
        } else if (depth_ == pointDepth_) {
            pointDepth_ = 0;
            ++end_.points;
            (*take_)(point_);
        }
        text_.clear();
    }

    XML_Parser parser_;
    const std::function<void(const GpxPoint&)>* take_;
    GpxPoint point_;
    std::string text_;
    GpxEnd end_;
    std::size_t depth_ = 0;
    std::size_t pointDepth_ = 0;
    std::size_t extensionsDepth_ = 0;
    bool isGpx_ = false;
    bool isLeaf_ = false;
    bool segmentBegins_ = true;
};

void XMLCALL elementBegins(void* walk, const XML_Char* name, const XML_Char** attributes) {
    static_cast<Walk*>(walk)->begin(localName(name), attributes);
}

void XMLCALL elementEnds(void* walk, const XML_Char* name) {
    static_cast<Walk*>(walk)->end(localName(name));
}

void XMLCALL textComes(void* walk, const XML_Char* text, int length) {
    static_cast<Walk*>(walk)->text({text, static_cast<std::size_t>(length)});
}

/// Its being there keeps expat from writing out entities within texts; those within attributes are
/// bounded by expat itself.
void XMLCALL otherComes(void* /*walk*/, const XML_Char* /*text*/, int /*length*/) {}

void XMLCALL entityIsDeclared(void* walk, const XML_Char* name, int /*isParameter*/,
                              const XML_Char* /*value*/, int /*length*/, const XML_Char* /*base*/,
                              const XML_Char* /*systemId*/, const XML_Char* /*publicId*/,
                              const XML_Char* /*notation*/) {
    static_cast<Walk*>(walk)->countEntity(name);
}

/// Feeds the file to the parser until it ends, is stopped, or does not like it.
base::Result<void> feed(std::ifstream& file, std::uintmax_t size, XML_Parser parser,
                        base::Progress& progress) {
    std::vector<char> piece(std::size_t{1} << 17U);
    std::uintmax_t taken = 0;
    for (bool isLast = false; !isLast;) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        file.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        const auto got = file.gcount();
        isLast = got < static_cast<std::streamsize>(piece.size());
        taken += static_cast<std::uintmax_t>(got);
        if (XML_Parse(parser, piece.data(), static_cast<int>(got), isLast ? 1 : 0) !=
            XML_STATUS_OK) {
            break;
        }
        progress.tell(size == 0 ? 0.0 : static_cast<double>(taken) / static_cast<double>(size));
    }
    return {};
}

} // namespace

base::Result<GpxEnd> walkGpx(const std::filesystem::path& path,
                             const std::function<void(const GpxPoint&)>& take,
                             base::Progress& progress) {
    using base::ErrorKind;
    const auto size = base::sizeOfReadableFile(path);
    if (!size) {
        return std::unexpected(size.error());
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return base::fail(ErrorKind::unusableInput, "the file cannot be opened", path.string(),
                          "check that you may read it");
    }
    if (*size == 0) {
        return base::fail(ErrorKind::unusableInput, "the file is empty", path.string(),
                          "copy it again from where it was recorded");
    }
    const Parser parser(XML_ParserCreateNS(nullptr, '|'));
    if (!parser) {
        return base::fail(ErrorKind::unusableInput, "there is no memory to read it", path.string(),
                          "close other programs");
    }
    Walk walk(parser.get(), take);
    XML_SetUserData(parser.get(), &walk);
    XML_SetElementHandler(parser.get(), elementBegins, elementEnds);
    XML_SetCharacterDataHandler(parser.get(), textComes);
    XML_SetDefaultHandler(parser.get(), otherComes);
    XML_SetEntityDeclHandler(parser.get(), entityIsDeclared);
    progress.begin("reading the track");
    if (const auto fed = feed(file, *size, parser.get(), progress); !fed) {
        return std::unexpected(fed.error());
    }
    GpxEnd end = walk.end();
    const XML_Error error = XML_GetErrorCode(parser.get());
    if (error != XML_ERROR_NONE) {
        end.faultLine = static_cast<std::size_t>(XML_GetCurrentLineNumber(parser.get()));
        if (end.fault.empty()) {
            end.fault = XML_ErrorString(error);
        }
    }
    if (!walk.isGpx() || (end.points == 0 && !end.fault.empty())) {
        return base::fail(ErrorKind::unusableInput,
                          end.fault.empty()
                              ? "it is no GPX file"
                              : fmt::format("it cannot be read as GPX: {}", end.fault),
                          fmt::format("{}, line {}", path.string(), end.faultLine),
                          "export the track again as GPX 1.1");
    }
    return end;
}

} // namespace readers
