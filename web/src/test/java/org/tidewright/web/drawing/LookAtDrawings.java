package org.tidewright.web.drawing;

import java.nio.file.*;
import org.tidewright.plan.*;
import org.tidewright.plan.text.*;
import org.tidewright.web.desk.*;

public class LookAtDrawings {
    public static void main(String[] a) throws Exception {
        var desk = new HandMadeDesk();
        StringBuilder b = new StringBuilder(
                "<!doctype html><meta charset=utf-8><link rel=stylesheet href=/work/wt/web/web/src/main/resources/org/tidewright/web/asset/tokens.css><link rel=stylesheet href=/work/wt/web/web/src/main/resources/org/tidewright/web/asset/components.css><link rel=stylesheet href=/work/wt/web/web/src/main/resources/org/tidewright/web/asset/drawing.css><body>");
        for (var e : desk.systems()) {
            var v = desk.system(e.id()).get();
            var r = desk.waterAfter(v.plan(), desk.usualOrder(v.plan()));
            var m = r.movement() == null ? desk.running(v.plan()) : r.movement();
            for (int s : new int[] {0, m.time().length - 1}) {
                var d = SectionDrawing.of(
                        v.plan(), m, s, v.plan().units(), v.plan().name());
                b.append(
                        "<div style='width:862px;margin:10px;border:1px solid #888;background:var(--sheet)'><div class=\""
                                + d.classes() + "\">" + d.svg() + "</div></div>");
            }
        }
        Files.writeString(Path.of(a[0]), b);
    }
}
