package flankfit.cli;

import flankfit.control.FlowStep;
import flankfit.control.FlowStep.Variable;
import java.io.IOException;
import java.util.List;

/** The steps of a block as objects. */
final class StepJson implements FlowStep.Teller<StepJson.Writing> {
  private final Json json;

  /** Writes one step. */
  interface Writing {
    void write() throws IOException;
  }

  StepJson(Json json) {
    this.json = json;
  }

  private Json begin(String kind) throws IOException {
    return json.object().put("kind", kind);
  }

  private void variables(String name, List<Variable> variables) throws IOException {
    json.array(name);
    for (Variable variable : variables) {
      json.object().put("variable", variable.number()).put("value", variable.value()).end();
    }
    json.endArray();
  }

  @Override
  public Writing computed(FlowStep.Computed step) {
    return () -> {
      begin("computed").put("text", step.text());
      variables("reads", step.reads());
      json.put("value", step.value()).end();
    };
  }

  @Override
  public Writing assigned(FlowStep.Assigned step) {
    return () ->
        begin("assigned")
            .put("variable", step.variable())
            .put("before", step.before())
            .put("after", step.after())
            .end();
  }

  @Override
  public Writing tested(FlowStep.Tested step) {
    return () -> begin("tested").put("holds", step.holds()).end();
  }

  @Override
  public Writing jumped(FlowStep.Jumped step) {
    return () -> begin("jumped").put("sequence", step.sequence()).put("toLine", step.line()).end();
  }

  @Override
  public Writing loopPass(FlowStep.LoopPass step) {
    return () -> begin("loop pass").put("loop", step.loop()).put("pass", step.pass()).end();
  }

  @Override
  public Writing loopLeft(FlowStep.LoopLeft step) {
    return () -> begin("loop left").put("loop", step.loop()).put("toLine", step.line()).end();
  }

  @Override
  public Writing loopBack(FlowStep.LoopBack step) {
    return () -> begin("loop back").put("loop", step.loop()).put("toLine", step.line()).end();
  }

  @Override
  public Writing called(FlowStep.Called step) {
    return () -> {
      begin("called")
          .put("program", step.program())
          .put("time", step.time())
          .put("times", step.times())
          .put("modal", step.modal());
      variables("arguments", step.arguments());
      json.put("toFile", step.file()).put("toLine", step.line()).end();
    };
  }

  @Override
  public Writing returned(FlowStep.Returned step) {
    return () -> {
      begin("returned").put("program", step.program());
      if (step.sequence().isPresent()) {
        json.put("sequence", step.sequence().getAsInt());
      }
      json.put("toFile", step.file()).put("toLine", step.line()).end();
    };
  }
}
