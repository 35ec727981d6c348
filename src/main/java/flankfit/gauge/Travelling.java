package flankfit.gauge;

import flankfit.gauge.Travel.Contact;
import flankfit.gauge.Travel.End;
import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A gauge on its way, element by element. What the gauge's last thread has left no longer holds it;
 * that is reckoned with only when it matters, since it can only make room.
 */
final class Travelling {
  private final WallField field;
  private final ThreadGauge gauge;
  private final From from;
  private final Play play;
  private final Rooms rooms;
  private final LargestGauge largest;
  private final double own;
  private double tightest = Double.POSITIVE_INFINITY;
  private List<Contact> tightestContacts = List.of();
  private double tightestX;
  private double tightestY;
  private boolean crestBlocked;
  private int rear;

  Travelling(WallField field, ThreadGauge gauge, From from, Play play) {
    this.field = field;
    this.gauge = gauge;
    this.from = from;
    this.play = play;
    this.rooms = Rooms.onTheWay(field, gauge);
    this.largest = new LargestGauge(rooms, play == Play.FREE, false);
    this.own = rooms.pitchHeight();
  }

  Travel travel() {
    for (int step = 0; step < rooms.size(); step++) {
      int element = element(step);
      while (Math.abs(rooms.height(element(rear)) - rooms.height(element)) > gauge.length()) {
        rear++;
      }
      if (largest.isBrokenBy(element)) {
        double before = largest.height();
        if (!goesOn(step)) {
          return stopped(step, before);
        }
      }
    }
    End end = field.isThrough() ? End.THROUGH : End.ON_FLOOR;
    double last = from == From.MOUTH ? field.bottom() : field.top();
    return result(turns(last), last, end, clearance(tightest));
  }

  /**
   * Pitch diameter of the largest gauge of the form that goes as far as a height, less its own
   * (mm); not a number when the crest lets none go there.
   */
  double clearanceTo(double height) {
    int step = 0;
    for (; step < rooms.size() && !isBeyond(rooms.height(element(step)), height); step++) {
      int element = element(step);
      while (Math.abs(rooms.height(element(rear)) - rooms.height(element)) > gauge.length()) {
        rear++;
      }
      if (largest.isBrokenBy(element)) {
        goesOn(step);
        if (crestBlocked) {
          return Double.NaN;
        }
      }
    }
    if (step > 0 && height >= field.bottom() && height <= field.top()) {
      // Flanks may run out here, so that the very height counts.
      rooms.take(Rooms.of(field.at(height), gauge));
      double room = roomBefore(step) - slack();
      rooms.leave(0);
      if (Double.isNaN(room)) {
        return room;
      }
      tightest = Math.min(tightest, own + room);
    }
    return Math.min(rooms.winding().pitch(), 2 * (tightest - own) / rooms.winding().tan());
  }

  private boolean isBeyond(double height, double wanted) {
    return from == From.MOUTH ? height < wanted : height > wanted;
  }

  /** Takes the next element in; what is only thought to lie there is read before it stops all. */
  private boolean goesOn(int step) {
    int element = element(step);
    double tightestBefore = tightest;
    List<Contact> contactsBefore = tightestContacts;
    double xBefore = tightestX;
    double yBefore = tightestY;
    boolean goes = advance(step);
    if (!goes && !rooms.isRead(element)) {
      rooms.put(element, Rooms.of(field.at(rooms.height(element)), gauge));
      tightest = tightestBefore;
      tightestContacts = contactsBefore;
      tightestX = xBefore;
      tightestY = yBefore;
      largest.clear();
      goes = advance(step);
    }
    return goes;
  }

  /** Takes the next element in; false when the gauge does not go there. */
  private boolean advance(int step) {
    boolean stands = fit(step);
    if (!stands || largest.height() < tightest) {
      boolean left = largest.touchesOutside(lowest(step), highest(step));
      if (left) {
        largest.clear();
        stands = fit(step);
      }
      if (stands && largest.height() < tightest) {
        tightest = largest.height();
        remember(largest);
      }
    }
    crestBlocked = !stands;
    return stands && largest.height() >= own - slack();
  }

  private boolean fit(int step) {
    return largest.fit(lowest(step), highest(step));
  }

  private Travel stopped(int step, double before) {
    double now = rooms.height(element(step));
    double last = step > 0 ? rooms.height(element(step - 1)) : now;
    StopSearch search =
        new StopSearch(field, rooms, at -> Rooms.of(at, gauge), () -> roomBefore(step));
    double found = crestBlocked ? Double.NaN : largest.height() - own;
    double z = search.between(last, before - own + slack(), now, found + slack());
    int low = search.isFound() ? lowestBefore(step) : lowest(step);
    int high = search.isFound() ? highestBefore(step) : highest(step);
    largest.clear();
    crestBlocked = !largest.fit(low, high);
    if (!crestBlocked) {
      tightest = largest.height();
      remember(largest);
    } else {
      // The crest meets metal: no gauge with this crest passes, so its size is asked anew.
      LargestGauge growing = new LargestGauge(rooms, play == Play.FREE, true);
      growing.fit(low, high);
      tightest = growing.height();
      remember(growing);
    }
    return result(Math.max(0, turns(z)), z, End.STOPPED, clearance(tightest));
  }

  /** Room beyond the gauge's own size before a step and in what was taken in beside (mm). */
  private double roomBefore(int step) {
    largest.clear();
    boolean stands = largest.fit(lowestBefore(step), highestBefore(step));
    return stands ? largest.height() - own + slack() : Double.NaN;
  }

  private int lowestBefore(int step) {
    return step > 0 ? lowest(step - 1) : 0;
  }

  private int highestBefore(int step) {
    return step > 0 ? highest(step - 1) : -1;
  }

  /** Less than nothing that a gauge may lack and still go (mm). */
  private double slack() {
    return Tolerance.MODEL.value() * rooms.winding().tan() / 2;
  }

  private OptionalDouble clearance(double height) {
    boolean met = height <= own + rooms.winding().pitch() / 2;
    return met
        ? OptionalDouble.of(2 * (height - own) / rooms.winding().tan())
        : OptionalDouble.empty();
  }

  private Travel result(double turns, double z, End end, OptionalDouble clearance) {
    return new Travel(
        gauge, from, play, turns, z, end, tightestContacts, clearance, tightestX, tightestY);
  }

  private void remember(LargestGauge at) {
    List<Contact> contacts = new ArrayList<>();
    for (int id : at.contacts(Rooms.TOUCHED)) {
      contacts.add(contact(id));
    }
    contacts.sort(
        Comparator.comparingDouble((Contact contact) -> -contact.turn())
            .thenComparing(Contact::by));
    tightestContacts = contacts;
    tightestX = rooms.winding().sign() * at.shift(0) / rooms.winding().tan();
    tightestY = rooms.winding().sign() * at.shift(1) / rooms.winding().tan();
  }

  private Contact contact(int id) {
    int element = id / LargestGauge.KINDS;
    double z = rooms.height(element);
    return new Contact(Rooms.part(id), rooms.theta(element), turns(z), z);
  }

  private double turns(double z) {
    double gone = from == From.MOUTH ? field.mouth() - z : z - field.farMouth();
    return gone / rooms.winding().lead();
  }

  private int element(int step) {
    return from == From.MOUTH ? step : rooms.size() - 1 - step;
  }

  private int lowest(int step) {
    return Math.min(element(rear), element(step));
  }

  private int highest(int step) {
    return Math.max(element(rear), element(step));
  }
}
