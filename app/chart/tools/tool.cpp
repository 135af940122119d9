// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/tool.h"

#include "app/chart/tools/cut_line_tool.h"
#include "app/chart/tools/lasso_tool.h"
#include "app/chart/tools/measure_tool.h"
#include "app/chart/tools/note_tool.h"
#include "app/chart/tools/polygon_tool.h"
#include "app/chart/tools/shore_tool.h"
#include "app/chart/tools/stroke_tool.h"

namespace chart {

std::unique_ptr<Tool> makeTool(ToolKind kind) {
    switch (kind) {
    case ToolKind::pan:
        return nullptr;
    case ToolKind::cutLine:
        return std::make_unique<CutLineTool>();
    case ToolKind::note:
        return std::make_unique<NoteTool>();
    case ToolKind::polygon:
        return std::make_unique<PolygonTool>();
    case ToolKind::lasso:
        return std::make_unique<LassoTool>();
    case ToolKind::shore:
        return std::make_unique<ShoreTool>();
    case ToolKind::stroke:
        return std::make_unique<StrokeTool>();
    case ToolKind::measure:
        return std::make_unique<MeasureTool>();
    }
    return nullptr;
}

} // namespace chart
